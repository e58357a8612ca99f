import { DomainError } from '../errors.js';
import { measureBox } from './measure-box.js';
import { measureMeasured } from './measure-measured.js';
import { measurePolygon } from './measure-polygon.js';
import { measureTwoStake } from './measure-two-stake.js';
import type { MeasuredShape } from './measured-shape.js';
import { OUTLINE_SHAPES, type Outline } from './outline.js';

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
