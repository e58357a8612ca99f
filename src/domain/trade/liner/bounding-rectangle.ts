import { DomainError } from '../../errors.js';
import type { Point } from '../outline.js';

export interface BoundingRectangle {
  /** The longer side; m. */
  readonly lengthM: number;
  /** m */
  readonly widthM: number;
}

/**
 * The rectangle, turned as needed, that holds all points with the smallest sheet: the smallest (length + margin) × (width +
 * margin). One side of it lies on a side of the convex hull for the smallest area, and with the same margin on both sides the
 * candidates are the same, so every hull side is tried.
 * @param points metres; at least three, not all on a line
 * @param marginM what the sheet is longer and wider by than the rectangle; 0 or more
 * @throws DomainError (pointer "") for points on a line
 * @see Freeman and Shapira 1975 (a side of the smallest rectangle lies on the hull; from memory)
 */
export function boundingRectangle(points: readonly Point[], marginM = 0): BoundingRectangle {
  const hull = convexHull(points);
  if (hull.length < 3) throw DomainError.at('', 'All points lie on one line; an outline needs an area.');
  const count = hull.length;
  // Three times around: the farthest point behind runs up to one turn past the side, which itself goes around once.
  const [xs, ys] = [[...hull, ...hull, ...hull].map(([x]) => x), [...hull, ...hull, ...hull].map(([, y]) => y)];
  const dot = (k: number, u: number, v: number): number => (xs[k] as number) * u + (ys[k] as number) * v;
  let best: { sheet: number; rectangle: BoundingRectangle } | null = null;
  // The farthest points ahead, across and behind only move forward as the side turns: all sides in one walk around.
  let [ahead, across, behind] = [1, 1, 1];
  for (let i = 0; i < count; i += 1) {
    const [dx, dy] = [(xs[i + 1] as number) - (xs[i] as number), (ys[i + 1] as number) - (ys[i] as number)];
    const size = Math.sqrt(dx * dx + dy * dy);
    const [ux, uy] = [dx / size, dy / size];
    ahead = Math.max(ahead, i + 1);
    while (dot(ahead + 1, ux, uy) > dot(ahead, ux, uy)) ahead += 1;
    across = Math.max(across, ahead);
    while (dot(across + 1, -uy, ux) > dot(across, -uy, ux)) across += 1;
    behind = Math.max(behind, across);
    while (dot(behind + 1, ux, uy) < dot(behind, ux, uy)) behind += 1;
    const [a, b] = [dot(ahead, ux, uy) - dot(behind, ux, uy), dot(across, -uy, ux) - dot(i, -uy, ux)];
    const sheet = (a + marginM) * (b + marginM);
    if (best === null || sheet < best.sheet) best = { sheet, rectangle: { lengthM: Math.max(a, b), widthM: Math.min(a, b) } };
  }
  return (best as { rectangle: BoundingRectangle }).rectangle;
}

/** Corners of the convex hull, counterclockwise, none on a straight side (Andrew's monotone chain). */
function convexHull(points: readonly Point[]): Point[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const half = (list: readonly Point[]): Point[] => {
    const chain: Point[] = [];
    for (const point of list) {
      while (chain.length > 1 && turn(chain.at(-2) as Point, chain.at(-1) as Point, point) <= 0) chain.pop();
      chain.push(point);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

function turn(a: Point, b: Point, c: Point): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}
