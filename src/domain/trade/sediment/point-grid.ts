/** A point that a grid finds again. */
export interface GridPoint {
  readonly x: number;
  readonly y: number;
}

/** Metres. */
export interface Box {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/**
 * Points in square cells, about as many cells as points, so that the search for the nearest one looks at a neighborhood
 * alone: 5,000 readings against some thousand shore points would otherwise be tens of millions of distances.
 */
export class PointGrid<P extends GridPoint> {
  private readonly cellM: number;
  private readonly columns: number;
  private readonly rows: number;
  private readonly cells: P[][];

  /** @param box holds all the points, and is wider than nothing in one direction at least */
  constructor(points: readonly P[], private readonly box: Box) {
    const [width, height] = [box.maxX - box.minX, box.maxY - box.minY];
    this.cellM = Math.max(width, height) / Math.max(1, Math.ceil(Math.sqrt(points.length)));
    this.columns = Math.floor(width / this.cellM) + 1;
    this.rows = Math.floor(height / this.cellM) + 1;
    this.cells = Array.from({ length: this.columns * this.rows }, () => []);
    for (const point of points) this.cells[this.row(point.y) * this.columns + this.column(point.x)]?.push(point);
  }

  /** The nearest point; null in an empty grid. Of two at the same distance the one met first, which is always the same. */
  nearest(x: number, y: number): P | null {
    let best: P | null = null;
    let bestSquared = Infinity;
    const [column, row] = [this.column(x), this.row(y)];
    for (let ring = 0; ring <= Math.max(this.columns, this.rows); ring += 1) {
      // A point in this ring is at least (ring - 1) cells away, whatever its own place in its cell.
      const floor = Math.max(0, ring - 1) * this.cellM;
      if (floor * floor > bestSquared) break;
      for (let r = Math.max(0, row - ring); r <= Math.min(this.rows - 1, row + ring); r += 1) {
        const step = ring === 0 || Math.abs(r - row) === ring ? 1 : 2 * ring;
        for (let c = column - ring; c <= column + ring; c += step) {
          if (c < 0 || c >= this.columns) continue;
          for (const point of this.cells[r * this.columns + c] as P[]) {
            const squared = (point.x - x) * (point.x - x) + (point.y - y) * (point.y - y);
            if (squared < bestSquared) [best, bestSquared] = [point, squared];
          }
        }
      }
    }
    return best;
  }

  private column(x: number): number {
    return Math.max(0, Math.min(this.columns - 1, Math.floor((x - this.box.minX) / this.cellM)));
  }

  private row(y: number): number {
    return Math.max(0, Math.min(this.rows - 1, Math.floor((y - this.box.minY) / this.cellM)));
  }
}

export function boxOf(points: readonly GridPoint[]): Box {
  const box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
  for (const { x, y } of points) {
    box.minX = Math.min(box.minX, x);
    box.maxX = Math.max(box.maxX, x);
    box.minY = Math.min(box.minY, y);
    box.maxY = Math.max(box.maxY, y);
  }
  return box;
}
