import type { Sharp } from 'sharp';
import type { MediaType } from '../uploads/upload-limits.js';
import { imageLibrary } from './image-library.js';
import { jpegOfHeic } from './read-heic.js';
import { requirePixels, requireUnpacked, unreadable } from './refusals.js';

/** A file of a hundred kilobytes may unfold to gigabytes. The largest phone cameras have some 50 million pixels without tricks. */
const MOST_PIXELS = 64_000_000;
/**
 * Of PNG and WebP, which are held whole while JPEG is worked on line by line: two kilobytes of WebP took 900 MiB, a PNG
 * of 16 bits a color as much. Four bytes for each of 33 million pixels, more than any screen has.
 */
const MOST_UNPACKED_BYTES = 128 * 1024 * 1024;
const THUMBNAIL_PIXELS = 320;
const MOST_SECONDS = 20;
const LIMITS = { limitInputPixels: MOST_PIXELS, failOn: 'error', sequentialRead: true } as const;

export type ImageType = Exclude<MediaType, 'application/pdf'>;
type DecodedType = Exclude<ImageType, 'image/heic'>;

export interface ProcessedImage {
  readonly bytes: Buffer;
  readonly mediaType: ImageType;
  /** In pixels, upright. */
  readonly width: number;
  readonly height: number;
  /** JPEG, at most 320 pixels in each direction. */
  readonly thumbnail: Buffer;
}

/**
 * Turns a photo upright and takes out of it all that tells where, when and with what it was taken; only the color
 * profile stays. HEIC becomes JPEG, which everything shows.
 * @param asItCame keeps the bytes as they are, with all that they tell
 * @throws Problem 422 for what can't be decoded or has more than 64 million pixels; HEIC may have 50 million, PNG and WebP what unpacks to 128 MiB
 */
export async function processImage(bytes: Buffer, type: ImageType, asItCame: boolean): Promise<ProcessedImage> {
  if (type !== 'image/heic') return processed(bytes, type, asItCame);
  const jpeg = await jpegOfHeic(bytes);
  const image = await processed(jpeg, 'image/jpeg', true);
  return asItCame ? { ...image, bytes, mediaType: type } : image;
}

async function processed(bytes: Buffer, type: DecodedType, asItCame: boolean): Promise<ProcessedImage> {
  const open = await imageLibrary();
  const head = await open(bytes, { limitInputPixels: false }).metadata().catch(unreadable);
  // As it will be seen.
  const { width, height } = head.autoOrient;
  requirePixels(width, height, MOST_PIXELS);
  if (type !== 'image/jpeg') requireUnpacked(width * height * head.channels * (head.depth === 'uchar' ? 1 : 2), MOST_UNPACKED_BYTES);
  const upright = (): Sharp => open(bytes, LIMITS).timeout({ seconds: MOST_SECONDS }).autoOrient();
  const thumbnail = await decoded(upright().resize(THUMBNAIL_PIXELS, THUMBNAIL_PIXELS, { fit: 'inside', withoutEnlargement: true }).flatten({ background: '#ffffff' }).jpeg({ quality: 75 }));
  return { bytes: asItCame ? bytes : await decoded(encoded(upright().keepIccProfile(), type)), mediaType: type, width, height, thumbnail };
}

function decoded(image: Sharp): Promise<Buffer> {
  return image.toBuffer().catch(unreadable);
}

function encoded(image: Sharp, type: DecodedType): Sharp {
  if (type === 'image/png') return image.png();
  if (type === 'image/webp') return image.webp({ quality: 88 });
  // Tables made for the one photo save some hundredths of its bytes, and cost four more for each of its pixels in memory.
  return image.jpeg({ quality: 88, optimiseCoding: false });
}
