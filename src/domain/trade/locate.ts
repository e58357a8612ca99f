import type { Point } from './outline.js';
import { next } from './polygon.js';

/** A rod set at the water's edge reads some centimetres in or out; nobody wants a warning for that. Metres. */
export const SHORE_TOLERANCE_M = 0.05;

/** One edge of a polygon, from its point `index` to the next. */
export interface Edge {
  readonly index: number;
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
}

/**
 * The edges of a polygon by height: gives those that pass within `toleranceM` of a height, and perhaps some more.
 * They are sorted into horizontal bands once, so that each point meets only the edges at its own height: 5,000 readings
 * against 2,000 edges would otherwise be ten million tests.
 * @param points of a simple polygon, metres
 */
export function edgesByHeight(points: readonly Point[], toleranceM: number): (y: number) => readonly Edge[] {
  const ys = points.map((point) => point[1]);
  const low = ys.reduce((a, b) => (b < a ? b : a)) - toleranceM;
  const high = ys.reduce((a, b) => (b > a ? b : a)) + toleranceM;
  const bands: Edge[][] = Array.from({ length: points.length }, () => []);
  const bandOf = (y: number): number => {
    const band = Math.floor(((y - low) / (high - low)) * bands.length);
    return Math.max(0, Math.min(bands.length - 1, band));
  };
  points.forEach((from, index) => {
    const to = next(points, index);
    const edge = { index, ax: from[0], ay: from[1], bx: to[0], by: to[1] };
    const last = bandOf(Math.max(edge.ay, edge.by) + toleranceM);
    for (let band = bandOf(Math.min(edge.ay, edge.by) - toleranceM); band <= last; band += 1) {
      bands[band]?.push(edge);
    }
  });
  return (y) => (y < low || y > high ? [] : (bands[bandOf(y)] ?? []));
}

/**
 * A test of points against a polygon: true when a point lies outside by more than the shore tolerance.
 * @param points of a simple polygon, metres
 */
export function outsideTest(points: readonly Point[]): (point: Point) => boolean {
  const edgesAt = edgesByHeight(points, SHORE_TOLERANCE_M);
  return ([x, y]) => {
    const edges = edgesAt(y);
    return !oddCrossings(x, y, edges) && !edges.some((edge) => nearestOnEdge(x, y, edge).squared <= SHORE_TOLERANCE_M * SHORE_TOLERANCE_M);
  };
}

/** Whether a ray to the right crosses the outline an odd number of times: whether the point lies inside. */
export function oddCrossings(x: number, y: number, edges: readonly Edge[]): boolean {
  let inside = false;
  for (const { ax, ay, bx, by } of edges) {
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) inside = !inside;
  }
  return inside;
}

/** How far along an edge (0 to 1) a point comes nearest to it, and the square of that distance. */
export function nearestOnEdge(x: number, y: number, { ax, ay, bx, by }: Edge): { along: number; squared: number } {
  const dx = bx - ax;
  const dy = by - ay;
  const projected = ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy);
  const along = projected < 0 ? 0 : projected > 1 ? 1 : projected;
  const ex = x - ax - along * dx;
  const ey = y - ay - along * dy;
  return { along, squared: ex * ex + ey * ey };
}
