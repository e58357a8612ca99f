import { DomainError } from '../../errors.js';
import { requireFallingCurve, type CurvePoint } from '../pump-curve/index.js';

/** A checked pump curve. Flows in m3/s, heads in m. */
export interface PumpCurve {
  readonly leastFlow: number;
  readonly mostFlow: number;
  /** Head at a flow from `leastFlow` to `mostFlow`. */
  readonly headAt: (flow: number) => number;
}

export const MAX_CURVE_POINTS = 100;

/**
 * A curve through the published points that never rises between them: a cubic spline would swing above its points and
 * promise head that the pump does not have.
 * @throws DomainError at /i/flow when flows do not grow, at /i/head when a head is negative or the curve rises: such a
 *   pump has two flows for one head, and the operating point would be a matter of luck
 * @see Fritsch & Butland 1984, monotone piecewise cubic interpolation (from memory)
 */
export function pumpCurve(points: readonly CurvePoint[]): PumpCurve {
  check(points);
  const flows = points.map(({ flowM3PerS }) => flowM3PerS);
  const heads = points.map(({ headM }) => headM);
  const slopes = monotoneSlopes(flows, heads);
  const at = (list: readonly number[], i: number): number => list[i] as number;
  const headAt = (flow: number): number => {
    // The piece that the flow lies in, by halving: an operating point asks for 60 flows.
    let [left, right] = [0, flows.length - 1];
    while (right - left > 1) {
      const middle = (left + right) >>> 1;
      if (flow > at(flows, middle)) left = middle;
      else right = middle;
    }
    const width = at(flows, left + 1) - at(flows, left);
    const t = (flow - at(flows, left)) / width;
    const [t2, t3] = [t * t, t * t * t];
    return at(heads, left) * (2 * t3 - 3 * t2 + 1) + at(heads, left + 1) * (3 * t2 - 2 * t3) + width * (at(slopes, left) * (t3 - 2 * t2 + t) + at(slopes, left + 1) * (t3 - t2));
  };
  return { leastFlow: at(flows, 0), mostFlow: at(flows, flows.length - 1), headAt };
}

function check(points: readonly CurvePoint[]): void {
  if (points.length > MAX_CURVE_POINTS) throw DomainError.at('', `A pump curve has at most ${MAX_CURVE_POINTS} points.`);
  requireFallingCurve(points);
  points.forEach(({ flowM3PerS, headM }, i) => {
    if (!(flowM3PerS >= 0)) throw DomainError.at(`/${i}/flow`, 'A flow must not be negative.');
    if (!(headM >= 0)) throw DomainError.at(`/${i}/head`, 'A head must not be negative.');
  });
}

/** The slope at each point: the weighted harmonic mean of its neighbours' secants, which keeps the curve monotone. */
function monotoneSlopes(x: readonly number[], y: readonly number[]): number[] {
  const widths = x.slice(1).map((value, i) => value - (x[i] as number));
  const secants = widths.map((width, i) => ((y[i + 1] as number) - (y[i] as number)) / width);
  return x.map((_, i) => {
    const [before, after] = [secants[i - 1], secants[i]];
    const [left, right] = [widths[i - 1], widths[i]];
    if (before === undefined || left === undefined) return endSlope(after as number, right as number, secants[1], widths[1]);
    if (after === undefined || right === undefined) return endSlope(before, left, secants[i - 2], widths[i - 2]);
    if (before * after <= 0) return 0;
    const [one, two] = [2 * right + left, right + 2 * left];
    return (one + two) / (one / before + two / after);
  });
}

/** One-sided three-point slope, held to what keeps the first or last piece monotone. */
function endSlope(secant: number, width: number, nextSecant: number | undefined, nextWidth: number | undefined): number {
  if (nextSecant === undefined || nextWidth === undefined) return secant;
  const slope = ((2 * width + nextWidth) * secant - width * nextSecant) / (width + nextWidth);
  if (slope * secant <= 0) return 0;
  return Math.abs(slope) > 3 * Math.abs(secant) ? 3 * secant : slope;
}
