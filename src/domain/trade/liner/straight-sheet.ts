import type { Outline } from '../outline.js';
import { outlineSpans } from './outline-spans.js';
import { linerSheet, sheetMargin, type LinerSheet } from './sheet.js';

/** 1 ft over the edge on each side: common practice. */
export const USUAL_OVERLAP_M = 0.3048;

/**
 * The sheet for a pond whose sides go straight down to the greatest depth: enough for every shelf and slope. Null when the
 * outline has no length and width, or no depth is known; readings that are all 0 are a depth that nobody has measured.
 * @param greatestDepthM m
 */
export function straightSheet(outline: Outline, greatestDepthM: number | null, overlapM = USUAL_OVERLAP_M): LinerSheet | null {
  if (outline.shape === 'measured' || greatestDepthM === null || greatestDepthM <= 0) return null;
  const walls = [{ dropM: greatestDepthM, runM: 0 }];
  const { lengthM, widthM } = outlineSpans(outline, sheetMargin(walls, overlapM).marginM);
  return linerSheet(lengthM, widthM, walls, overlapM);
}
