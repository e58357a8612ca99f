import { Decimal, plain } from '../decimal.js';
import { DomainError, within } from '../errors.js';
import { isNumberPair, numberPair } from '../json-values.js';
import type { Working, WorkingValue } from '../working.js';
import type { MeasuredShape } from './measured-shape.js';
import { inMetres, metresPer, scaled } from './numbers.js';
import { MAX_LENGTH_M, MAX_OUTLINE_POINTS, type Point, type PolygonOutline } from './outline.js';
import { polygonArea, polygonPerimeter } from './polygon.js';
import { requireSimple, same } from './simple-polygon.js';

/** Longer lists are named, not copied: a working is stored with every line that leans on it. */
const LISTED_POINTS = 60;

/** @throws DomainError at /unit, /points or /points/i */
export function measurePolygon(outline: PolygonOutline): MeasuredShape {
  const factor = metresPer(outline.unit);
  const limit = new Decimal(MAX_LENGTH_M).div(factor).toNumber();
  outline.points.forEach((point, i) => {
    if (!isNear(point, limit)) refuse(point, `/points/${i}`);
  });
  const points = opened(outline.points);
  requireBounded(points, 'points');
  requireSimple(points, 'points');
  return measurePoints(points, outline.unit, factor, []);
}

/** Area and perimeter of a checked polygon: computed in the entered unit, converted once. */
export function measurePoints(
  points: readonly Point[],
  unit: string,
  factor: Decimal,
  before: readonly WorkingValue[],
): MeasuredShape {
  const area = polygonArea(points);
  const perimeter = polygonPerimeter(points);
  const areaM2 = scaled(area, factor.times(factor));
  if (!(areaM2 > 0)) throw DomainError.at('', 'The outline is too small to have an area; check the unit.');
  const perimeterM = scaled(perimeter, factor);
  const inputs = [...before, { name: 'points', value: listed(points, 'points'), unit }];
  const [f, metres] = [plain(factor), factor.toNumber()];
  return {
    areaM2,
    perimeterM,
    points: points.map((point) => inMetres(point, metres)),
    areaWorking: working("Area of a polygon by the surveyor's formula: half of |sum of x(i) y(i+1) - x(i+1) y(i)|", inputs, [
      ['area in the square of the entered unit', `shoelace sum over ${points.length} points / 2`, plain(area), undefined],
      ['area', `${plain(area)} × ${f}²`, plain(areaM2), 'm2'],
    ]),
    perimeterWorking: working('Perimeter of a polygon: sum of its edges, the last point joined to the first', inputs, [
      ['perimeter in the entered unit', `sum of ${points.length} edges`, plain(perimeter), unit],
      ['perimeter', `${plain(perimeter)} × ${f}`, plain(perimeterM), 'm'],
    ]),
  };
}

type StepRow = [label: string, expression: string, value: string, unit: string | undefined];

function working(rule: string, inputs: WorkingValue[], rows: StepRow[]): Working {
  const steps = rows.map(([label, expression, value, unit]) => ({ label, expression, value, ...(unit && { unit }) }));
  return { rule, inputs, steps };
}

/** @throws DomainError at /list */
export function requireBounded(points: readonly Point[], list: string): void {
  if (points.length <= MAX_OUTLINE_POINTS) return;
  throw DomainError.at(`/${list}`, `An outline may have at most ${MAX_OUTLINE_POINTS} points; thin the list out.`);
}

/** Without the closing point, if there is one. */
export function opened(points: readonly Point[]): readonly Point[] {
  const [first, last] = [points[0], points.at(-1)];
  const closed = points.length > 1 && first !== undefined && last !== undefined && same(first, last);
  return closed ? points.slice(0, -1) : points;
}

function isNear(point: Point, limit: number): boolean {
  return isNumberPair(point) && Math.abs(point[0]) <= limit && Math.abs(point[1]) <= limit;
}

function refuse(point: Point, pointer: string): never {
  within(pointer, () => numberPair(point));
  throw DomainError.at(pointer, `A point must lie within ${MAX_LENGTH_M / 1000} km of the origin; check the unit.`);
}

/** Pairs of numbers in full, or only their count when there are many. */
export function listed(pairs: readonly Point[], what: string): string {
  if (pairs.length > LISTED_POINTS) return `${pairs.length} ${what} of the outline`;
  return pairs.map(([x, y]) => `(${plain(x)}, ${plain(y)})`).join(' ');
}
