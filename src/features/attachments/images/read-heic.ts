import { Worker } from 'node:worker_threads';
import { imageLibrary } from './image-library.js';
import { requirePixels, unreadable } from './refusals.js';
import { withProfile } from './with-profile.js';

const THREAD = new URL('./heic-thread.mjs', import.meta.url);
/** Phones have up to 48 million; these take 420 MB in the decoder, and 200 MB more as they come out. */
const MOST_PIXELS = 50_000_000;
const MOST_BYTES = 512 * 1024 * 1024;
/** A quiet machine takes 5 s for the largest; a busy one must not refuse it for good. */
const MOST_MS = 120_000;

interface Decoded {
  readonly width: number;
  readonly height: number;
  /** Red, green, blue, opacity; null for more pixels than may be. */
  readonly pixels: ArrayBuffer | null;
}

/**
 * A JPEG of a HEIC photo: upright, with its color profile and nothing else. The decoder runs in a thread that lives as
 * long as it takes: it computes for seconds, and gives its memory back only when it ends.
 * @throws Problem 422 for what can't be decoded or has more than 50 million pixels
 */
export async function jpegOfHeic(bytes: Buffer): Promise<Buffer> {
  const { width, height, pixels } = await decoded(bytes).catch(unreadable);
  requirePixels(width, height, MOST_PIXELS);
  if (pixels === null) return unreadable();
  const sharp = await imageLibrary();
  // The image library reads the head of these files, though not their pixels.
  const { icc } = await sharp(bytes).metadata().catch(unreadable);
  const jpeg = await sharp(Buffer.from(pixels), { raw: { width, height, channels: 4 } }).flatten({ background: '#ffffff' }).jpeg({ quality: 90, optimiseCoding: false }).toBuffer();
  return icc === undefined ? jpeg : withProfile(jpeg, icc);
}

function decoded(bytes: Buffer): Promise<Decoded> {
  return new Promise<Decoded>((resolve, reject) => {
    // The decoder tells its troubles on the console, which is the service's log.
    const thread = new Worker(THREAD, { workerData: { bytes, mostPixels: MOST_PIXELS, mostBytes: MOST_BYTES }, stdout: true, stderr: true });
    const ended = setTimeout(() => void thread.terminate(), MOST_MS);
    thread.once('message', resolve).once('error', reject).once('exit', () => {
      clearTimeout(ended);
      reject(new Error('The decoder ended without a picture.'));
    });
  });
}
