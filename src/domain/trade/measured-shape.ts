import type { Working } from '../working.js';
import type { Point } from './outline.js';

export interface MeasuredShape {
  /** m2 */
  readonly areaM2: number;
  /** m */
  readonly perimeterM: number;
  /** The edge points in metres, in the entered order and without a closing point; null when the shape has none. */
  readonly points: readonly Point[] | null;
  readonly areaWorking: Working;
  readonly perimeterWorking: Working;
}
