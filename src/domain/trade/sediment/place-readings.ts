import { DomainError } from '../../errors.js';
import type { EdgeBands } from '../locate.js';
import type { Point } from '../outline.js';
import { next } from '../polygon.js';
import type { Probes } from '../probes.js';
import { metresPer } from '../numbers.js';
import type { Unit } from '../../quantity/index.js';

/** A reading at its place, metres. */
export interface Placed {
  readonly x: number;
  readonly y: number;
  readonly toSedimentM: number;
  readonly toBottomM: number;
  /** Where on the outline it lies: 3.25 is a quarter of the way from point 3 to the next; null inside. */
  readonly shore: number | null;
}

export interface Placement {
  readonly placed: readonly Placed[];
  /** The readings outside the outline, by their index. */
  readonly strays: readonly number[];
  /** How many readings have no place. */
  readonly unplaced: number;
  /** How many readings share their place with an earlier one; the mean of such readings stands there. */
  readonly shared: number;
}

/** Nearer to a corner than this, a reading is taken as the corner's own: no rod is set more exactly. Metres. */
const CORNER_M = 0.01;
/** Places are told apart to the millimeter; none lies more than 10,000,000 mm from the origin. */
const KEY_ROW = 2 ** 25;

/**
 * The readings that have a place inside the outline, or within the shore tolerance of it: those move onto the shore.
 * @param pointsM the outline
 * @param edges of it, within the shore tolerance
 */
export function placeReadings(pointsM: readonly Point[], edges: EdgeBands, outlineUnit: Unit, probes: Probes): Placement {
  const perPlace = metresPer(outlineUnit).toNumber();
  const perDepth = metresPer(probes.unit).toNumber();
  const places = new Map<number | string, number>();
  const placed: Placed[] = [];
  const counts: number[] = [];
  const strays: number[] = [];
  let unplaced = 0;
  probes.readings.forEach(({ at, toSediment, toBottom }, index) => {
    if (at === undefined) {
      unplaced += 1;
      return;
    }
    const [x, y] = [at[0] * perPlace, at[1] * perPlace];
    const here = placeAt(x, y, edges, pointsM, toSediment * perDepth, toBottom * perDepth);
    if (here === null) {
      strays.push(index);
      return;
    }
    const key = here.shore === null ? Math.round(x * 1000) * KEY_ROW + Math.round(y * 1000) : `shore ${here.shore.toFixed(6)}`;
    const earlier = places.get(key);
    if (earlier === undefined) {
      places.set(key, placed.length);
      placed.push(here);
      counts.push(1);
      return;
    }
    const count = counts[earlier] as number;
    placed[earlier] = meanOf(placed[earlier] as Placed, count, here);
    counts[earlier] = count + 1;
  });
  return { placed, strays, unplaced, shared: probes.readings.length - unplaced - strays.length - placed.length };
}

/** @throws DomainError at /readings when no reading has a place inside */
export function requirePlaces({ placed }: Placement): void {
  if (placed.length === 0) throw DomainError.at('/readings', 'No reading has a place inside the outline; note where the readings were taken, in the unit and axes of the outline.');
}

/** A reading at its place: inside, or on the shore when it is within the tolerance of it; null outside. */
function placeAt(x: number, y: number, edges: EdgeBands, points: readonly Point[], toSedimentM: number, toBottomM: number): Placed | null {
  const nearest = edges.nearest(x, y);
  if (nearest === null) return edges.contains(x, y) ? { x, y, toSedimentM, toBottomM, shore: null } : null;
  const { index, along } = nearest;
  const [[ax, ay], [bx, by]] = [points[index] as Point, next(points, index)];
  const length = Math.sqrt((bx - ax) ** 2 + (by - ay) ** 2);
  if (along * length < CORNER_M) return { x: ax, y: ay, toSedimentM, toBottomM, shore: index };
  if ((1 - along) * length < CORNER_M) return { x: bx, y: by, toSedimentM, toBottomM, shore: (index + 1) % points.length };
  return { x: ax + along * (bx - ax), y: ay + along * (by - ay), toSedimentM, toBottomM, shore: index + along };
}

function meanOf(earlier: Placed, count: number, later: Placed): Placed {
  const mean = (a: number, b: number): number => (a * count + b) / (count + 1);
  return { ...earlier, toSedimentM: mean(earlier.toSedimentM, later.toSedimentM), toBottomM: mean(earlier.toBottomM, later.toBottomM) };
}
