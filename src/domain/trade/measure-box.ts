import { plain } from '../decimal.js';
import { fields } from '../errors.js';
import type { WorkingValue } from '../working.js';
import { ellipseArea, ellipsePerimeter } from './ellipse.js';
import type { MeasuredShape } from './measured-shape.js';
import { asEntered, lengthInMetres } from './numbers.js';
import type { BoxOutline } from './outline.js';

/** @throws DomainError at /length or /width */
export function measureBox(outline: BoxOutline): MeasuredShape {
  const { length, width } = fields({
    length: () => lengthInMetres(outline.length),
    width: () => lengthInMetres(outline.width),
  });
  const inputs: WorkingValue[] = [
    { name: 'length', value: plain(outline.length.value), unit: outline.length.unit },
    { name: 'width', value: plain(outline.width.value), unit: outline.width.unit },
  ];
  const metres = [
    { label: 'length in metres', expression: asEntered(outline.length), value: plain(length), unit: 'm' },
    { label: 'width in metres', expression: asEntered(outline.width), value: plain(width), unit: 'm' },
  ];
  const l = plain(length);
  const w = plain(width);
  const ellipse = outline.shape === 'ellipse';
  const areaM2 = ellipse ? ellipseArea(length / 2, width / 2) : length * width;
  const perimeterM = ellipse ? ellipsePerimeter(length / 2, width / 2) : 2 * (length + width);
  const areaStep = ellipse ? `π × (${l} / 2) × (${w} / 2)` : `${l} × ${w}`;
  const perimeterStep = ellipse
    ? `π × (a + b) × (1 + 3 h / (10 + √(4 - 3 h))), a = ${l} / 2, b = ${w} / 2, h = ((a - b) / (a + b))²`
    : `2 × (${l} + ${w})`;
  return {
    areaM2,
    perimeterM,
    points: null,
    areaWorking: {
      rule: ellipse ? 'Area of an ellipse: π × half the length × half the width' : 'Area of a rectangle',
      inputs,
      steps: [...metres, { label: 'area', expression: areaStep, value: plain(areaM2), unit: 'm2' }],
    },
    perimeterWorking: {
      rule: ellipse ? "Perimeter of an ellipse by Ramanujan's second formula" : 'Perimeter of a rectangle',
      inputs,
      steps: [...metres, { label: 'perimeter', expression: perimeterStep, value: plain(perimeterM), unit: 'm' }],
    },
  };
}
