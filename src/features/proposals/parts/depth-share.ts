import { type Quantity, toSi } from '../../../domain/quantity/index.js';

interface DepthPoint {
  readonly distance: Quantity;
  readonly depth: Quantity;
}

/**
 * The share of a profile's width that lies at these depths, straight between its points; 0 to 1. A shelf at exactly one of
 * the depths counts whole, a wall has no width to plant on. Null when the profile has no width.
 * @param leastM m @param mostM m, may be Infinity
 */
export function shareWithin(profile: readonly DepthPoint[], leastM: number, mostM: number): number | null {
  const points = profile.map(({ distance, depth }) => ({ x: toSi(distance), z: toSi(depth) }));
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined || last.x <= first.x) return null;
  const within = points.slice(1).reduce((sum, to, i) => {
    const from = points[i] as (typeof points)[number];
    return sum + (to.x - from.x) * partWithin(Math.min(from.z, to.z), Math.max(from.z, to.z), leastM, mostM);
  }, 0);
  return within / (last.x - first.x);
}

/** The part of an even slope from `low` to `high` that lies within. */
function partWithin(low: number, high: number, leastM: number, mostM: number): number {
  if (low === high) return low >= leastM && low <= mostM ? 1 : 0;
  return Math.max(0, Math.min(high, mostM) - Math.max(low, leastM)) / (high - low);
}
