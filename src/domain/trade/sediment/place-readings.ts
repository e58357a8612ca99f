import { DomainError } from '../../errors.js';
import { edgesByHeight, nearestOnEdge, oddCrossings, SHORE_TOLERANCE_M, type Edge } from '../locate.js';
import type { Point } from '../outline.js';
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
 */
export function placeReadings(pointsM: readonly Point[], outlineUnit: Unit, probes: Probes): Placement {
  const perPlace = metresPer(outlineUnit).toNumber();
  const perDepth = metresPer(probes.unit).toNumber();
  const edgesAt = edgesByHeight(pointsM, SHORE_TOLERANCE_M);
  const at = new Map<number | string, { first: Placed; count: number }>();
  const strays: number[] = [];
  let unplaced = 0;
  let shared = 0;
  probes.readings.forEach((reading, index) => {
    if (reading.at === undefined) {
      unplaced += 1;
      return;
    }
    const [x, y] = [reading.at[0] * perPlace, reading.at[1] * perPlace];
    const place = placeOf(x, y, edgesAt(y), pointsM);
    if (place === null) {
      strays.push(index);
      return;
    }
    const placed = { ...place, toSedimentM: reading.toSediment * perDepth, toBottomM: reading.toBottom * perDepth };
    const key = place.shore === null ? Math.round(x * 1000) * KEY_ROW + Math.round(y * 1000) : `shore ${place.shore.toFixed(6)}`;
    const earlier = at.get(key);
    if (earlier === undefined) {
      at.set(key, { first: placed, count: 1 });
      return;
    }
    shared += 1;
    at.set(key, { first: meanOf(earlier.first, earlier.count, placed), count: earlier.count + 1 });
  });
  return { placed: [...at.values()].map(({ first }) => first), strays, unplaced, shared };
}

/** @throws DomainError at /readings when no reading has a place inside */
export function requirePlaces({ placed }: Placement): void {
  if (placed.length === 0) throw DomainError.at('/readings', 'No reading has a place inside the outline; note where the readings were taken, in the unit and axes of the outline.');
}

function placeOf(x: number, y: number, edges: readonly Edge[], points: readonly Point[]): Pick<Placed, 'x' | 'y' | 'shore'> | null {
  let nearest: { edge: Edge; along: number; squared: number } | null = null;
  for (const edge of edges) {
    if (x < Math.min(edge.ax, edge.bx) - SHORE_TOLERANCE_M || x > Math.max(edge.ax, edge.bx) + SHORE_TOLERANCE_M) continue;
    const { along, squared } = nearestOnEdge(x, y, edge);
    if (squared <= SHORE_TOLERANCE_M * SHORE_TOLERANCE_M && (nearest === null || squared < nearest.squared)) nearest = { edge, along, squared };
  }
  if (nearest === null) return oddCrossings(x, y, edges) ? { x, y, shore: null } : null;
  const { edge, along } = nearest;
  const length = Math.sqrt((edge.bx - edge.ax) ** 2 + (edge.by - edge.ay) ** 2);
  if (along * length < CORNER_M) return { x: edge.ax, y: edge.ay, shore: edge.index };
  if ((1 - along) * length < CORNER_M) return { x: edge.bx, y: edge.by, shore: (edge.index + 1) % points.length };
  return { x: edge.ax + along * (edge.bx - edge.ax), y: edge.ay + along * (edge.by - edge.ay), shore: edge.index + along };
}

function meanOf(earlier: Placed, count: number, later: Placed): Placed {
  const mean = (a: number, b: number): number => (a * count + b) / (count + 1);
  return { ...earlier, toSedimentM: mean(earlier.toSedimentM, later.toSedimentM), toBottomM: mean(earlier.toBottomM, later.toBottomM) };
}
