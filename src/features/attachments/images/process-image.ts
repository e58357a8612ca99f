import sharp, { type Sharp } from 'sharp';
import { notPossible } from '../../../platform/http/problems.js';
import type { MediaType } from '../uploads/upload-limits.js';

/** A file of a hundred kilobytes may unfold to gigabytes. The largest phone cameras have some 50 million pixels without tricks. */
const MOST_PIXELS = 64_000_000;
const THUMBNAIL_PIXELS = 320;
const MOST_SECONDS = 20;

// What is not one of the three never reaches the many other decoders of the library.
sharp.block({ operation: ['VipsForeignLoad'] });
sharp.unblock({ operation: ['VipsForeignLoadJpegBuffer', 'VipsForeignLoadPngBuffer', 'VipsForeignLoadWebpBuffer'] });
sharp.cache(false);
// One processor is for everybody else.
sharp.concurrency(1);

export type ImageType = Exclude<MediaType, 'application/pdf'>;

export interface ProcessedImage {
  readonly bytes: Buffer;
  /** In pixels, upright. */
  readonly width: number;
  readonly height: number;
  /** JPEG, at most 320 pixels in each direction. */
  readonly thumbnail: Buffer;
}

/**
 * Turns a photo upright and takes out of it all that tells where, when and with what it was taken; only the color
 * profile stays.
 * @param asItCame keeps the bytes as they are, with all that they tell
 * @throws Problem 422 for what can't be decoded or has more than 64 million pixels
 */
export async function processImage(bytes: Buffer, type: ImageType, asItCame: boolean): Promise<ProcessedImage> {
  const { width, height } = await readable(bytes);
  const upright = (): Sharp => open(bytes).autoOrient();
  const thumbnail = await decoded(upright().resize(THUMBNAIL_PIXELS, THUMBNAIL_PIXELS, { fit: 'inside', withoutEnlargement: true }).flatten({ background: '#ffffff' }).jpeg({ quality: 75 }));
  return { bytes: asItCame ? bytes : await decoded(encoded(upright().keepIccProfile(), type)), width, height, thumbnail };
}

function open(bytes: Buffer): Sharp {
  return sharp(bytes, { limitInputPixels: MOST_PIXELS, failOn: 'error', sequentialRead: true }).timeout({ seconds: MOST_SECONDS });
}

/** The size as it will be seen, from the head of the file alone. */
async function readable(bytes: Buffer): Promise<{ width: number; height: number }> {
  const head = await sharp(bytes, { limitInputPixels: false }).metadata().catch(unreadable);
  const { width, height } = head.autoOrient;
  if (width * height > MOST_PIXELS) throw notPossible(`The image has ${width} × ${height} pixels; it may have at most ${MOST_PIXELS} in all. Make it smaller.`);
  return { width, height };
}

function decoded(image: Sharp): Promise<Buffer> {
  return image.toBuffer().catch(unreadable);
}

function encoded(image: Sharp, type: ImageType): Sharp {
  if (type === 'image/png') return image.png();
  if (type === 'image/webp') return image.webp({ quality: 88 });
  // Tables made for the one photo save some hundredths of its bytes, and cost four more for each of its pixels in memory.
  return image.jpeg({ quality: 88, optimiseCoding: false });
}

function unreadable(): never {
  throw notPossible('The image is broken, or not complete. Take or save it again.');
}
