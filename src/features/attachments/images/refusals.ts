import { notPossible } from '../../../platform/http/problems.js';

const MIB = 1024 * 1024;

/** @throws Problem 422 */
export function unreadable(): never {
  throw notPossible('The image is broken, or not complete. Take or save it again.');
}

/** @throws Problem 422 for an image that takes more bytes than this when it is unpacked */
export function requireUnpacked(bytes: number, most: number): void {
  if (bytes > most) throw notPossible(`The image takes ${Math.ceil(bytes / MIB)} MiB when it is unpacked; as PNG or WebP it may take at most ${most / MIB}. Make it smaller, or save it as JPEG.`);
}

/** @throws Problem 422 for an image of more pixels than this */
export function requirePixels(width: number, height: number, most: number): void {
  if (width * height > most) throw notPossible(`The image has ${width} × ${height} pixels; it may have at most ${most} in all. Make it smaller.`);
}
