import { Decimal, plain } from '../decimal.js';
import { DomainError, within } from '../errors.js';
import { finiteNumber, numberPair } from '../json-values.js';
import type { MeasuredShape } from './measured-shape.js';
import { listed, measurePoints, opened, requireBounded } from './measure-polygon.js';
import { metresPer } from './numbers.js';
import { MAX_LENGTH_M, type Point, type TwoStakeOutline } from './outline.js';
import { requireSimple } from './simple-polygon.js';

/** A point on the baseline has a + b = baseline, and 0.1 + 0.2 is not 0.3 in binary. Relative to the baseline. */
const TOLERANCE = 1e-9;

/** @throws DomainError at /unit, /baseline, /ranges or /ranges/i */
export function measureTwoStake(outline: TwoStakeOutline): MeasuredShape {
  const factor = metresPer(outline.unit);
  const limit = new Decimal(MAX_LENGTH_M).div(factor).toNumber();
  const baseline = within('/baseline', () => finiteNumber(outline.baseline));
  if (!(baseline > 0 && baseline <= limit)) {
    throw DomainError.at('/baseline', `The stakes must stand apart, and at most ${MAX_LENGTH_M / 1000} km.`);
  }
  const points = opened(outline.ranges.map((range, i) => located(range, baseline, limit, `/ranges/${i}`)));
  requireBounded(points, 'ranges');
  requireSimple(points, 'ranges');
  return measurePoints(points, outline.unit, factor, [
    { name: 'baseline', value: plain(baseline), unit: outline.unit },
    { name: 'tape distances from stakes A and B', value: listed(outline.ranges, 'ranges'), unit: outline.unit },
  ]);
}

/** The point at distance a from (0, 0) and b from (baseline, 0), on the side of positive y. */
function located(range: readonly [number, number], baseline: number, limit: number, pointer: string): Point {
  const [a, b] = within(pointer, () => numberPair(range));
  if (a < 0 || b < 0 || a > limit || b > limit) {
    throw DomainError.at(pointer, `A tape distance must be from 0 to ${MAX_LENGTH_M / 1000} km.`);
  }
  const slack = baseline * TOLERANCE;
  if (a + b < baseline - slack) {
    throw DomainError.at(pointer, `The two distances do not reach each other over a baseline of ${plain(baseline)}; measure them again.`);
  }
  if (Math.abs(a - b) > baseline + slack) {
    throw DomainError.at(pointer, `The two distances differ by more than the baseline of ${plain(baseline)}; measure them again.`);
  }
  const x = ((a - b) * (a + b)) / (2 * baseline) + baseline / 2;
  // Just outside a possible triangle, within the slack, the point is on the baseline.
  return [x, Math.sqrt(Math.max(0, (a - x) * (a + x)))];
}
