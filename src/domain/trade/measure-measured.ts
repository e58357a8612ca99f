import { plain } from '../decimal.js';
import { DomainError, fields } from '../errors.js';
import type { Working } from '../working.js';
import type { MeasuredShape } from './measured-shape.js';
import { asEntered, lengthInMetres, positiveInUnit } from './numbers.js';
import type { MeasuredOutline } from './outline.js';

/** So that a circle whose figures carry binary dust still passes. Relative. */
const TOLERANCE = 1e-9;

/**
 * @throws DomainError at /area or /perimeter; at /area also when no shape has so much area within so short an edge
 *   (a circle has the most: P² >= 4 π A), which is how swapped or mistyped figures show
 */
export function measureMeasured(outline: MeasuredOutline): MeasuredShape {
  const { area: areaM2, perimeter: perimeterM } = fields({
    area: () => positiveInUnit(outline.area, 'area', 'm2'),
    perimeter: () => lengthInMetres(outline.perimeter),
  });
  if (perimeterM * perimeterM < 4 * Math.PI * areaM2 * (1 - TOLERANCE)) {
    throw DomainError.at(
      '/area',
      `No shape with a perimeter of ${asEntered(outline.perimeter)} encloses ${asEntered(outline.area)}; check both figures.`,
    );
  }
  return {
    areaM2,
    perimeterM,
    points: null,
    areaWorking: taken('area', outline.area.value, outline.area.unit, areaM2, 'm2'),
    perimeterWorking: taken('perimeter', outline.perimeter.value, outline.perimeter.unit, perimeterM, 'm'),
  };
}

function taken(name: string, value: number, unit: string, si: number, siUnit: string): Working {
  return {
    rule: `${name === 'area' ? 'Area' : 'Perimeter'} as measured elsewhere`,
    inputs: [{ name, value: plain(value), unit }],
    steps: [{ label: name, expression: `${plain(value)} ${unit}`, value: plain(si), unit: siUnit }],
  };
}
