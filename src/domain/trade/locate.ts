import type { Point } from './outline.js';
import { next } from './polygon.js';

/** A rod set at the water's edge reads some centimetres in or out; nobody wants a warning for that. Metres. */
const SHORE_TOLERANCE_M = 0.05;

interface Edge {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
}

/**
 * A test of points against a polygon: true when a point lies outside by more than the shore tolerance.
 * The edges are sorted into horizontal bands once, so that each point meets only the edges at its own height:
 * 5,000 readings against 2,000 edges would otherwise be ten million tests.
 * @param points of a simple polygon, metres
 */
export function outsideTest(points: readonly Point[]): (point: Point) => boolean {
  const ys = points.map((point) => point[1]);
  const low = ys.reduce((a, b) => (b < a ? b : a)) - SHORE_TOLERANCE_M;
  const high = ys.reduce((a, b) => (b > a ? b : a)) + SHORE_TOLERANCE_M;
  const bands: Edge[][] = Array.from({ length: points.length }, () => []);
  const bandOf = (y: number): number => {
    const band = Math.floor(((y - low) / (high - low)) * bands.length);
    return Math.max(0, Math.min(bands.length - 1, band));
  };
  points.forEach((from, i) => {
    const to = next(points, i);
    const edge = { ax: from[0], ay: from[1], bx: to[0], by: to[1] };
    const last = bandOf(Math.max(edge.ay, edge.by) + SHORE_TOLERANCE_M);
    for (let band = bandOf(Math.min(edge.ay, edge.by) - SHORE_TOLERANCE_M); band <= last; band += 1) {
      bands[band]?.push(edge);
    }
  });
  return (point) => {
    const [x, y] = [point[0], point[1]];
    if (y < low || y > high) return true;
    const edges = bands[bandOf(y)] ?? [];
    return !oddCrossings(x, y, edges) && !edges.some((edge) => near(x, y, edge));
  };
}

/** Whether a ray to the right crosses the outline an odd number of times. */
function oddCrossings(x: number, y: number, edges: readonly Edge[]): boolean {
  let inside = false;
  for (const { ax, ay, bx, by } of edges) {
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) inside = !inside;
  }
  return inside;
}

function near(x: number, y: number, { ax, ay, bx, by }: Edge): boolean {
  const dx = bx - ax;
  const dy = by - ay;
  const along = ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy);
  const clipped = along < 0 ? 0 : along > 1 ? 1 : along;
  const ex = x - ax - clipped * dx;
  const ey = y - ay - clipped * dy;
  return ex * ex + ey * ey <= SHORE_TOLERANCE_M * SHORE_TOLERANCE_M;
}
