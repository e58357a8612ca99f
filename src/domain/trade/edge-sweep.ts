import { orient2d } from 'robust-predicates';
import type { Point } from './outline.js';
import { next } from './polygon.js';

/**
 * A line swept over an outline from left to right, and upward where points lie above each other. It holds the edges that
 * it cuts from the lowest to the highest: up to the first place where two edges meet this order is certain, and there the
 * two stand side by side. So only neighbors on the line are ever compared.
 * @see Shamos & Hoey 1976, geometric intersection problems (from memory)
 */
export class EdgeSweep {
  /** The points in the order in which the line meets them, and the place of each point in it. */
  private readonly order: readonly number[];
  private readonly rank: Uint32Array;

  /** @param meet whether two edges, by the index of their first points, share a point */
  constructor(
    private readonly points: readonly Point[],
    private readonly meet: (points: readonly Point[], one: number, other: number) => boolean,
  ) {
    this.order = [...points.keys()].sort((i, j) => compare(points[i] as Point, points[j] as Point));
    this.rank = new Uint32Array(points.length);
    this.order.forEach((point, place) => (this.rank[point] = place));
  }

  /** Whether any two of the first `count` edges meet, other than one edge and the next in their common point. */
  anyMeet(count: number): boolean {
    const line: number[] = [];
    let last = -1;
    for (const point of this.order) {
      if (point > count) continue;
      if (last >= 0 && compare(this.points[last] as Point, this.points[point] as Point) === 0) return true;
      last = point;
      const begun: number[] = [];
      const ended: number[] = [];
      for (const edge of this.edgesAt(point, count)) (this.begins(edge, point) ? begun : ended).push(edge);
      const at = this.placeOf(point, line);
      for (let i = at; i < at + ended.length; i += 1) {
        // An edge that passes through this point, between those that end in it.
        if (!ended.includes(line[i] as number)) return true;
      }
      if (ended.length === 0 && at < line.length && this.side(line[at] as number, point) === 0) return true;
      if (begun.length === 1 && ended.length === 1) line[at] = begun[0] as number;
      else line.splice(at, ended.length, ...this.upward(begun, point));
      if (this.meetAt(line, at) || (begun.length > 0 && this.meetAt(line, at + begun.length))) return true;
    }
    return false;
  }

  /** The one or two edges that have a point, out of the first `count`. */
  private edgesAt(point: number, count: number): number[] {
    const { length } = this.points;
    const before = point > 0 ? point - 1 : count === length ? length - 1 : null;
    if (before === null) return [point];
    return point < count ? [before, point] : [before];
  }

  private begins(edge: number, point: number): boolean {
    const other = edge === point ? (point + 1) % this.points.length : edge;
    return (this.rank[point] as number) < (this.rank[other] as number);
  }

  /** How many edges of the line lie wholly below a point. */
  private placeOf(point: number, line: readonly number[]): number {
    let [low, high] = [0, line.length];
    while (low < high) {
      const middle = (low + high) >>> 1;
      if (this.side(line[middle] as number, point) > 0) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  /** Above 0 for a point above an edge, 0 for one on it. */
  private side(edge: number, point: number): number {
    const [from, to, [x, y]] = [this.points[edge] as Point, next(this.points, edge), this.points[point] as Point];
    // The predicate is above 0 to the right of an edge; seen from left to right, that is below it.
    const turn = orient2d(from[0], from[1], to[0], to[1], x, y);
    return this.begins(edge, edge) ? -turn : turn;
  }

  /** Edges that begin in one point, the lower first. */
  private upward(edges: number[], point: number): number[] {
    const [one, other] = edges;
    if (one === undefined || other === undefined) return edges;
    const far = other === point ? (point + 1) % this.points.length : other;
    return this.side(one, far) > 0 ? edges : [other, one];
  }

  /** Whether the edges just below and just above a place of the line meet; an edge and the next one in walking order do not. */
  private meetAt(line: readonly number[], at: number): boolean {
    const [below, above] = [line[at - 1], line[at]];
    if (below === undefined || above === undefined) return false;
    const apart = Math.abs(below - above);
    return apart !== 1 && apart !== this.points.length - 1 && this.meet(this.points, below, above);
  }
}

function compare(a: Point, b: Point): number {
  return a[0] - b[0] || a[1] - b[1];
}
