import type { Point } from '../outline.js';

/**
 * The greatest distance between two of the points, in their unit: two calipers turned around the convex hull, since
 * all pairs of an outline of 2,000 points would take longer than a calculation may.
 * @see Shamos 1978, rotating calipers; Andrew 1979, monotone chain (from memory)
 */
export function farthestApart(points: readonly Point[]): number {
  const hull = convexHull(points);
  const at = (i: number): Point => hull[i % hull.length] as Point;
  let most = 0;
  let opposite = 1;
  for (let i = 0; i < hull.length; i += 1) {
    while (cross(at(i), at(i + 1), at(opposite + 1)) > cross(at(i), at(i + 1), at(opposite))) opposite += 1;
    most = Math.max(most, squareBetween(at(i), at(opposite)), squareBetween(at(i + 1), at(opposite)));
  }
  return Math.sqrt(most);
}

/** The hull against the clock, without points on its edges. */
function convexHull(points: readonly Point[]): Point[] {
  const sorted = [...points].sort(([x, y], [u, v]) => x - u || y - v);
  const half = (list: readonly Point[]): Point[] => {
    const chain: Point[] = [];
    for (const point of list) {
      while (chain.length >= 2 && cross(chain.at(-2) as Point, chain.at(-1) as Point, point) <= 0) chain.pop();
      chain.push(point);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

/** Twice the area of the triangle; above 0 when it turns left. */
function cross([ax, ay]: Point, [bx, by]: Point, [cx, cy]: Point): number {
  return (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
}

function squareBetween([x, y]: Point, [u, v]: Point): number {
  return (u - x) * (u - x) + (v - y) * (v - y);
}
