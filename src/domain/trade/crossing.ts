import { orient2d } from 'robust-predicates';
import { EdgeSweep } from './edge-sweep.js';
import { next } from './polygon.js';
import type { Point } from './outline.js';

/** Two edges that meet, by the index of their first points. */
export interface Crossing {
  readonly earlier: number;
  readonly later: number;
}

/**
 * Finds two non-adjacent edges that cross or touch: of all such pairs the one that a person walking along the list
 * meets first. A sweep tells whether any two meet, n log n even for a comb or a star, where comparing edges side by side
 * would take n²; the first place where they do is found by halving the walk.
 * @param points without a closing point; none repeats the one before, and no edge folds back onto the one before
 */
export function findCrossing(points: readonly Point[]): Crossing | null {
  const sweep = new EdgeSweep(points, meet);
  if (!sweep.anyMeet(points.length)) return null;
  let [apart, together] = [0, points.length];
  while (together - apart > 1) {
    const middle = Math.floor((apart + together) / 2);
    if (sweep.anyMeet(middle)) together = middle;
    else apart = middle;
  }
  const later = together - 1;
  for (let earlier = 0; earlier < later - 1; earlier += 1) {
    if (!(earlier === 0 && later === points.length - 1) && meet(points, earlier, later)) return { earlier, later };
  }
  return null;
}

/** Whether two edges share a point; the orientation test is exact, or else the answer would depend on rounding. */
function meet(points: readonly Point[], one: number, other: number): boolean {
  const [a, b, c, d] = [points[one] as Point, next(points, one), points[other] as Point, next(points, other)];
  for (const axis of [0, 1] as const) {
    if (Math.max(a[axis], b[axis]) < Math.min(c[axis], d[axis]) || Math.max(c[axis], d[axis]) < Math.min(a[axis], b[axis])) return false;
  }
  // On one line they share a point exactly when their boxes overlap.
  return !strictlySameSide(a, b, c, d) && !strictlySameSide(c, d, a, b);
}

function strictlySameSide(from: Point, to: Point, c: Point, d: Point): boolean {
  const one = orient2d(from[0], from[1], to[0], to[1], c[0], c[1]);
  const other = orient2d(from[0], from[1], to[0], to[1], d[0], d[1]);
  return (one > 0 && other > 0) || (one < 0 && other < 0);
}
