import { DomainError } from '../../errors.js';
import { toSi } from '../../quantity/index.js';
import { measureOutline } from '../measure-outline.js';
import type { Outline } from '../outline.js';
import { boundingRectangle, type BoundingRectangle } from './bounding-rectangle.js';

/**
 * Greatest length and width of an outline, turned so that the sheet becomes smallest.
 * @param marginM what the sheet is longer and wider by; 0 or more
 * @throws DomainError at /shape when only area and perimeter are known, and as {@link measureOutline}
 */
export function outlineSpans(outline: Outline, marginM: number): BoundingRectangle {
  if (outline.shape === 'measured') throw DomainError.at('/shape', 'Area and perimeter do not tell how long and wide a sheet must be; give length and width, or points.');
  const { points } = measureOutline(outline);
  if (points !== null) return boundingRectangle(points, marginM);
  const { length, width } = outline as Extract<Outline, { length: unknown }>;
  const [a, b] = [toSi(length), toSi(width)];
  return { lengthM: Math.max(a, b), widthM: Math.min(a, b) };
}
