import type { Point } from './outline.js';

/** Edge `index` runs from point `index` to the next; the last runs back to the first. */
export function next(points: readonly Point[], index: number): Point {
  return points[index + 1 === points.length ? 0 : index + 1] as Point;
}

/**
 * Area of a simple polygon by the surveyor's (shoelace) formula, in the square of the points' unit. Taken from the
 * first point, since coordinates far from the origin would otherwise cancel away the digits that matter.
 */
export function polygonArea(points: readonly Point[]): number {
  const [x0, y0] = points[0] as Point;
  let twice = 0;
  for (let i = 0; i < points.length; i += 1) {
    const [x, y] = points[i] as Point;
    const [u, v] = next(points, i);
    twice += (x - x0) * (v - y0) - (u - x0) * (y - y0);
  }
  return Math.abs(twice) / 2;
}

/** Perimeter in the points' unit. Square roots, not `hypot`, whose last digit differs between engines. */
export function polygonPerimeter(points: readonly Point[]): number {
  let sum = 0;
  for (let i = 0; i < points.length; i += 1) {
    const [x, y] = points[i] as Point;
    const [u, v] = next(points, i);
    sum += Math.sqrt((u - x) * (u - x) + (v - y) * (v - y));
  }
  return sum;
}
