import type { Point } from './outline.js';
import { next } from './polygon.js';

/** A rod set at the water's edge reads some centimetres in or out; nobody wants a warning for that. Metres. */
export const SHORE_TOLERANCE_M = 0.05;

/** The place on an outline that is nearest to a point: on edge `index`, from its point `index` to the next. */
export interface OnEdge {
  readonly index: number;
  /** How far along the edge, 0 to 1. */
  readonly along: number;
}

/**
 * The edges of a simple polygon, sorted into horizontal bands once, so that each point meets only the edges at its own
 * height: 5,000 readings against 2,000 edges would otherwise be ten million tests. Flat lists of numbers, since objects
 * for edges and bands cost more than the tests themselves.
 */
export class EdgeBands {
  /** ax, ay, bx, by of each edge. */
  private readonly edges: Float64Array;
  /** Band b holds the edges `items[starts[b]]` to before `items[starts[b + 1]]`. */
  private readonly starts: Uint32Array;
  private readonly items: Uint32Array;
  private readonly bands: number;
  private readonly low: number;
  private readonly high: number;

  /**
   * @param points of a simple polygon, metres
   * @param toleranceM how near to an edge a point is still found by {@link nearest}; 0 or more
   */
  constructor(points: readonly Point[], private readonly toleranceM: number) {
    this.bands = points.length;
    this.edges = new Float64Array(4 * points.length);
    let [low, high] = [Infinity, -Infinity];
    for (let index = 0; index < points.length; index += 1) {
      const [[ax, ay], [bx, by]] = [points[index] as Point, next(points, index)];
      this.edges[4 * index] = ax;
      this.edges[4 * index + 1] = ay;
      this.edges[4 * index + 2] = bx;
      this.edges[4 * index + 3] = by;
      if (ay < low) low = ay;
      if (ay > high) high = ay;
    }
    [this.low, this.high] = [low - toleranceM, high + toleranceM];
    this.starts = new Uint32Array(this.bands + 1);
    this.eachBand((band) => (this.starts[band + 1] as number)++);
    for (let band = 0; band < this.bands; band += 1) (this.starts[band + 1] as number) += this.starts[band] as number;
    this.items = new Uint32Array(this.starts[this.bands] as number);
    const filled = this.starts.slice();
    this.eachBand((band, edge) => {
      this.items[filled[band] as number] = edge;
      (filled[band] as number) += 1;
    });
  }

  /** Whether a ray to the right crosses the outline an odd number of times: whether the point lies inside. */
  contains(x: number, y: number): boolean {
    if (!(y >= this.low && y <= this.high)) return false;
    const { edges, items } = this;
    const band = this.bandOf(y);
    let inside = false;
    for (let k = this.starts[band] as number, end = this.starts[band + 1] as number; k < end; k += 1) {
      const e = 4 * (items[k] as number);
      const [ay, by] = [edges[e + 1] as number, edges[e + 3] as number];
      if (ay > y === by > y) continue;
      const [ax, bx] = [edges[e] as number, edges[e + 2] as number];
      if (x < ((bx - ax) * (y - ay)) / (by - ay) + ax) inside = !inside;
    }
    return inside;
  }

  /** The nearest place on the outline; null when it is farther away than the tolerance. */
  nearest(x: number, y: number): OnEdge | null {
    if (!(y >= this.low && y <= this.high)) return null;
    const { edges, items, toleranceM } = this;
    const band = this.bandOf(y);
    let [index, along, squared] = [-1, 0, toleranceM * toleranceM];
    for (let k = this.starts[band] as number, end = this.starts[band + 1] as number; k < end; k += 1) {
      const e = 4 * (items[k] as number);
      const [ax, ay, bx, by] = [edges[e] as number, edges[e + 1] as number, edges[e + 2] as number, edges[e + 3] as number];
      if (x < (ax < bx ? ax : bx) - toleranceM || x > (ax < bx ? bx : ax) + toleranceM) continue;
      const [dx, dy] = [bx - ax, by - ay];
      const projected = ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy);
      const share = projected < 0 ? 0 : projected > 1 ? 1 : projected;
      const [ex, ey] = [x - ax - share * dx, y - ay - share * dy];
      const away = ex * ex + ey * ey;
      if (away < squared || (index < 0 && away === squared)) [index, along, squared] = [items[k] as number, share, away];
    }
    return index < 0 ? null : { index, along };
  }

  /** Calls back for every band that an edge passes within the tolerance, and perhaps for some more; edges in order. */
  private eachBand(found: (band: number, edge: number) => void): void {
    for (let edge = 0; edge < this.bands; edge += 1) {
      const [ay, by] = [this.edges[4 * edge + 1] as number, this.edges[4 * edge + 3] as number];
      const last = this.bandOf(Math.max(ay, by) + this.toleranceM);
      for (let band = this.bandOf(Math.min(ay, by) - this.toleranceM); band <= last; band += 1) found(band, edge);
    }
  }

  private bandOf(y: number): number {
    const band = Math.floor(((y - this.low) / (this.high - this.low)) * this.bands);
    return band < 0 ? 0 : band >= this.bands ? this.bands - 1 : band;
  }
}

/**
 * A test of points against a polygon: true when a point lies outside by more than the shore tolerance.
 * @param points of a simple polygon, metres
 */
export function outsideTest(points: readonly Point[]): (point: Point) => boolean {
  const edges = new EdgeBands(points, SHORE_TOLERANCE_M);
  return ([x, y]) => !edges.contains(x, y) && edges.nearest(x, y) === null;
}
