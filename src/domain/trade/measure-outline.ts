import { DomainError } from '../errors.js';
import { measureBox } from './measure-box.js';
import { measureMeasured } from './measure-measured.js';
import { measurePolygon } from './measure-polygon.js';
import { measureTwoStake } from './measure-two-stake.js';
import type { MeasuredShape } from './measured-shape.js';
import { OUTLINE_SHAPES, type Outline } from './outline.js';

/** An outline is read, placed in, and covered by a sheet: each measures it, and the crossing search is most of the work. */
const MEASURED = new WeakMap<Outline, MeasuredShape>();

/**
 * Area and perimeter of a feature's outline.
 * @throws DomainError with a pointer into the outline, such as /points/3 for a polygon that crosses itself there or
 *   /ranges/2 for tape distances that make no triangle with the baseline
 * @param outline never changed once it was measured: the answer is kept with it
 */
export function measureOutline(outline: Outline): MeasuredShape {
  const known = MEASURED.get(outline);
  if (known !== undefined) return known;
  const shape = measured(outline);
  MEASURED.set(outline, shape);
  return shape;
}

function measured(outline: Outline): MeasuredShape {
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
