import { DomainError } from '../errors.js';
import type { Working } from '../working.js';
import { measureBox } from './measure-box.js';
import { measureMeasured } from './measure-measured.js';
import { measurePolygon } from './measure-polygon.js';
import { measureTwoStake } from './measure-two-stake.js';
import { OUTLINE_SHAPES, type Outline, type Point } from './outline.js';

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

/**
 * Area and perimeter of a feature's outline.
 * @throws DomainError with a pointer into the outline, such as /points/3 for a polygon that crosses itself there or
 *   /ranges/2 for tape distances that make no triangle with the baseline
 */
export function measureOutline(outline: Outline): MeasuredShape {
  switch (outline.shape) {
    case 'rectangle':
    case 'ellipse':
      return measureBox(outline);
    case 'polygon':
      return measurePolygon(outline);
    case 'two-stake':
      return measureTwoStake(outline);
    case 'measured':
      return measureMeasured(outline);
    default:
      throw DomainError.at('/shape', `The shape must be one of ${OUTLINE_SHAPES.join(', ')}.`);
  }
}
