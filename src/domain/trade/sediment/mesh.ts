import Delaunator from 'delaunator';
import type { Point } from '../outline.js';
import { polygonPerimeter } from '../polygon.js';
import type { Placed } from './place-readings.js';
import type { GridPoint } from './point-grid.js';

/** A point of the shore; `reading` where one was taken there. */
export interface ShorePoint extends GridPoint {
  readonly reading: Placed | null;
}

export interface Mesh {
  /** In walking order. */
  readonly shore: readonly ShorePoint[];
  /** The readings that do not lie on the shore. */
  readonly inside: readonly Placed[];
  /** Corners in threes: indices into the shore, then into the readings inside. */
  readonly corners: Uint32Array;
  /** Whether every piece of the shore is an edge of triangles, so that none reaches across it. */
  readonly alongShore: boolean;
}

/** The shore is cut into pieces of this share of it and no finer, however thin the spits and channels are. */
const FINEST = 1 / 4_000;

/**
 * The Delaunay triangulation of shore and readings. Pieces of the shore that are no edge of it are halved until all are:
 * without this, triangles would reach across the shore of a concave pond and count land as pond. Pieces that are edges
 * stay whole, since every new point of the shore takes part of the surface away from the readings.
 * @param points the outline, metres
 */
export function meshOf(points: readonly Point[], placed: readonly Placed[]): Mesh {
  const finest = polygonPerimeter(points) * FINEST;
  const inside = placed.filter((reading) => reading.shore === null).sort(byPlace);
  for (let shore = cornersAndReadings(points, placed); ; ) {
    const corners = triangles(shore, inside);
    const found = piecesIn(corners, shore.length);
    const alongShore = found.every((piece) => piece === 1);
    const finer = alongShore ? shore : halved(shore, found, finest);
    if (finer.length === shore.length) return { shore, inside, corners, alongShore };
    shore = finer;
  }
}

function cornersAndReadings(points: readonly Point[], placed: readonly Placed[]): ShorePoint[] {
  const readings = placed.filter((reading): reading is Placed & { shore: number } => reading.shore !== null).sort((a, b) => a.shore - b.shore);
  const shore: ShorePoint[] = [];
  let at = 0;
  points.forEach(([x, y], corner) => {
    if (readings[at]?.shore !== corner) shore.push({ x, y, reading: null });
    for (let reading = readings[at]; reading !== undefined && reading.shore < corner + 1; reading = readings[at]) {
      shore.push({ x: reading.x, y: reading.y, reading });
      at += 1;
    }
  });
  return shore;
}

/**
 * Sorted first, so that a grid of readings, where four points lie on one circle and either diagonal will do, gives the
 * same triangles wherever the lists begin and whichever way round they go. The readings come sorted: only the shore, which
 * changes from round to round, is sorted here and laid between them.
 */
function triangles(shore: readonly ShorePoint[], inside: readonly Placed[]): Uint32Array {
  const along = [...shore.keys()].sort((i, j) => byPlace(shore[i] as ShorePoint, shore[j] as ShorePoint));
  const order = new Uint32Array(shore.length + inside.length);
  const coordinates = new Float64Array(2 * order.length);
  for (let at = 0, s = 0, r = 0; at < order.length; at += 1) {
    const [edge, reading] = [shore[along[s] as number], inside[r]];
    const point = (reading === undefined || (edge !== undefined && byPlace(edge, reading) < 0) ? edge : reading) as GridPoint;
    order[at] = point === reading ? shore.length + r : (along[s] as number);
    if (point === reading) r += 1;
    else s += 1;
    coordinates[2 * at] = point.x;
    coordinates[2 * at + 1] = point.y;
  }
  return new Delaunator(coordinates).triangles.map((i) => order[i] as number);
}

function byPlace(a: GridPoint, b: GridPoint): number {
  return a.x - b.x || a.y - b.y;
}

/** Which pieces of the shore are edges of triangles; piece i runs from point i to the next. */
function piecesIn(corners: Uint32Array, count: number): Uint8Array {
  const found = new Uint8Array(count);
  for (let i = 0; i < corners.length; i += 1) {
    const from = corners[i] as number;
    const to = corners[i % 3 === 2 ? i - 2 : i + 1] as number;
    if (from >= count || to >= count) continue;
    if (to === (from + 1) % count) found[from] = 1;
    if (from === (to + 1) % count) found[to] = 1;
  }
  return found;
}

function halved(shore: readonly ShorePoint[], found: Uint8Array, finest: number): ShorePoint[] {
  return shore.flatMap((from, i) => {
    const to = shore[(i + 1) % shore.length] as ShorePoint;
    if (found[i] === 1 || Math.sqrt((to.x - from.x) ** 2 + (to.y - from.y) ** 2) < finest) return [from];
    return [from, { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2, reading: null }];
  });
}
