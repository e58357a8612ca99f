import { notPossible } from '../../../platform/http/problems.js';

/** @throws Problem 422 */
export function unreadable(): never {
  throw notPossible('The image is broken, or not complete. Take or save it again.');
}

/** @throws Problem 422 for an image of more pixels than this */
export function requirePixels(width: number, height: number, most: number): void {
  if (width * height > most) throw notPossible(`The image has ${width} × ${height} pixels; it may have at most ${most} in all. Make it smaller.`);
}
