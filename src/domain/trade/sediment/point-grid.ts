/** A point that a grid finds again. */
export interface GridPoint {
  readonly x: number;
  readonly y: number;
}

/**
 * Points in square cells, so that a question about a place looks at its neighborhood alone: the nearest of 5,000
 * readings to each of some thousand shore points would otherwise be tens of millions of distances.
 */
export class PointGrid<P extends GridPoint> {
  private readonly cells = new Map<number, P[]>();

  /** @param cellM the side of a cell, about the distance between neighboring points; metres */
  constructor(private readonly cellM: number, private readonly box: Box) {}

  /** A grid of about as many cells as points. */
  static over<P extends GridPoint>(points: readonly P[], box: Box): PointGrid<P> {
    const side = Math.max(box.maxX - box.minX, box.maxY - box.minY);
    const grid = new PointGrid<P>(side / Math.max(1, Math.ceil(Math.sqrt(points.length))), box);
    for (const point of points) grid.add(point);
    return grid;
  }

  add(point: P): void {
    const key = keyOf(this.column(point.x), this.row(point.y));
    const cell = this.cells.get(key);
    if (cell === undefined) this.cells.set(key, [point]);
    else cell.push(point);
  }

  /** The nearest point; null in an empty grid. Of two at the same distance the one that was added first. */
  nearest(x: number, y: number): P | null {
    let best: P | null = null;
    let bestSquared = Infinity;
    const [column, row] = [this.column(x), this.row(y)];
    const last = Math.ceil(Math.max(this.box.maxX - this.box.minX, this.box.maxY - this.box.minY) / this.cellM) + 1;
    for (let ring = 0; ring <= last; ring += 1) {
      // A point in this ring is at least (ring - 1) cells away, whatever its own place in its cell.
      const floor = Math.max(0, ring - 1) * this.cellM;
      if (floor * floor > bestSquared) break;
      for (const point of this.ringOf(column, row, ring)) {
        const squared = distanceSquared(point, x, y);
        if (squared < bestSquared) [best, bestSquared] = [point, squared];
      }
    }
    return best;
  }

  private *ringOf(column: number, row: number, ring: number): Generator<P> {
    for (let r = row - ring; r <= row + ring; r += 1) {
      const step = Math.abs(r - row) === ring ? 1 : 2 * ring;
      for (let c = column - ring; c <= column + ring; c += step) yield* this.cells.get(keyOf(c, r)) ?? [];
    }
  }

  private column(x: number): number {
    return Math.floor((x - this.box.minX) / this.cellM);
  }

  private row(y: number): number {
    return Math.floor((y - this.box.minY) / this.cellM);
  }
}

/** Metres. */
export interface Box {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

export function boxOf(points: readonly (readonly [number, number])[]): Box {
  const box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
  for (const [x, y] of points) {
    box.minX = Math.min(box.minX, x);
    box.maxX = Math.max(box.maxX, x);
    box.minY = Math.min(box.minY, y);
    box.maxY = Math.max(box.maxY, y);
  }
  return box;
}

/** Cells number a few thousand a side at most; a few lie outside the box, below 0. */
function keyOf(column: number, row: number): number {
  return (row + 1024) * 1_048_576 + column + 1024;
}

function distanceSquared({ x, y }: GridPoint, toX: number, toY: number): number {
  return (x - toX) * (x - toX) + (y - toY) * (y - toY);
}
