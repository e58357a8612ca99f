import { DomainError, fields, within } from '../errors.js';
import { finiteNumber, isNumberPair, listOf, numberPair, objectOf, type JsonObject } from '../json-values.js';
import { parseQuantity, parseUnit } from '../quantity/index.js';
import { measureOutline } from './measure-outline.js';
import { MAX_OUTLINE_POINTS, OUTLINE_SHAPES, type Outline, type Point } from './outline.js';

/**
 * An outline from untrusted JSON, checked for its form and its geometry: what this returns can be measured.
 * @throws DomainError with pointers into `value`
 */
export function parseOutline(value: unknown): Outline {
  const outline = readOutline(value);
  measureOutline(outline);
  return outline;
}

function readOutline(value: unknown): Outline {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    throw DomainError.at('', 'An outline must be an object with a shape and its measures.');
  }
  const { shape } = value as JsonObject;
  switch (shape) {
    case 'rectangle':
    case 'ellipse': {
      const from = objectOf(value, ['shape', 'length', 'width']);
      const length = () => parseQuantity(from.length, 'length');
      return { shape, ...fields({ length, width: () => parseQuantity(from.width, 'length') }) };
    }
    case 'polygon': {
      const from = objectOf(value, ['shape', 'unit', 'points']);
      return { shape, ...fields({ unit: () => parseUnit(from.unit, 'length'), points: () => pairs(from.points) }) };
    }
    case 'two-stake': {
      const from = objectOf(value, ['shape', 'unit', 'baseline', 'ranges']);
      const unit = () => parseUnit(from.unit, 'length');
      const baseline = () => finiteNumber(from.baseline);
      return { shape, ...fields({ unit, baseline, ranges: () => pairs(from.ranges) }) };
    }
    case 'measured': {
      const from = objectOf(value, ['shape', 'area', 'perimeter']);
      const area = () => parseQuantity(from.area, 'area');
      return { shape, ...fields({ area, perimeter: () => parseQuantity(from.perimeter, 'length') }) };
    }
    default:
      throw DomainError.at('/shape', `The shape must be one of ${OUTLINE_SHAPES.join(', ')}.`);
  }
}

/** One more than an outline has, since a closed list repeats its first point. */
function pairs(value: unknown): Point[] {
  return listOf(value, MAX_OUTLINE_POINTS + 1).map((pair, i) => (isNumberPair(pair) ? [pair[0], pair[1]] : within(`/${i}`, () => numberPair(pair))));
}
