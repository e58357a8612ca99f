import { orient2d } from 'robust-predicates';
import { next } from './polygon.js';
import type { Point } from './outline.js';

/** Two edges that meet, by the index of their first points. */
export interface Crossing {
  readonly earlier: number;
  readonly later: number;
}

/**
 * Finds two non-adjacent edges that cross or touch: of all such pairs the one that a person walking along the list
 * meets first. Edges are swept by their left ends, so that only edges side by side are compared: near n log n for
 * a pond, n² / 2 at worst. The orientation test is exact, or else the answer would depend on where the list starts.
 */
export function findCrossing(points: readonly Point[]): Crossing | null {
  const edges = points.map((point, index) => edgeBox(point, next(points, index), index));
  edges.sort((a, b) => a.left - b.left);
  let found: Crossing | null = null;
  for (let i = 0; i < edges.length; i += 1) {
    const a = edges[i] as EdgeBox;
    for (let j = i + 1; j < edges.length; j += 1) {
      const b = edges[j] as EdgeBox;
      if (b.left > a.right) break;
      if (b.low > a.high || b.high < a.low) continue;
      const earlier = Math.min(a.index, b.index);
      const later = Math.max(a.index, b.index);
      if (later - earlier === 1 || later - earlier === edges.length - 1) continue;
      if (found !== null && (later > found.later || (later === found.later && earlier > found.earlier))) continue;
      if (meet(a, b)) found = { earlier, later };
    }
  }
  return found;
}

interface EdgeBox {
  readonly index: number;
  readonly from: Point;
  readonly to: Point;
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

function edgeBox(from: Point, to: Point, index: number): EdgeBox {
  return {
    index,
    from,
    to,
    left: Math.min(from[0], to[0]),
    right: Math.max(from[0], to[0]),
    low: Math.min(from[1], to[1]),
    high: Math.max(from[1], to[1]),
  };
}

/** Whether two edges with overlapping boxes share a point; collinear ones do exactly when their boxes overlap. */
function meet(a: EdgeBox, b: EdgeBox): boolean {
  return !strictlySameSide(a.from, a.to, b) && !strictlySameSide(b.from, b.to, a);
}

function strictlySameSide(from: Point, to: Point, edge: EdgeBox): boolean {
  const one = orient2d(from[0], from[1], to[0], to[1], edge.from[0], edge.from[1]);
  const other = orient2d(from[0], from[1], to[0], to[1], edge.to[0], edge.to[1]);
  return (one > 0 && other > 0) || (one < 0 && other < 0);
}
