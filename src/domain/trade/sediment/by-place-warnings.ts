import type { EdgeRule } from './edge-rule.js';
import type { Placement } from './place-readings.js';
import type { Triangulated } from './triangulate.js';
import { errorWarnings, type VolumeError } from './volume-error.js';

interface Parts {
  readonly areaM2: number;
  readonly placement: Placement;
  readonly triangulated: Triangulated;
  readonly mean: { readonly sedimentM3: number };
  readonly error: VolumeError | null;
  readonly edge: EdgeRule;
}

const NAMED = 10;
/** Two methods further apart than this are said; neither of them is the right one. */
const APART = 0.05;
/** The triangles cover the outline to the last digits, unless its spits are too thin to be cut finely enough. */
const UNCOVERED = 0.001;

/** More of the surface than this without a reading at any corner of its triangle is said. */
const UNREAD = 0.1;

/** What an estimator should know before pricing from the figures. */
export function placeWarnings({ areaM2, placement, triangulated, mean, error, edge }: Parts): string[] {
  const { strays, unplaced, shared } = placement;
  const warnings: string[] = [];
  if (strays.length > 0) {
    const named = strays.slice(0, NAMED).join(', ') + (strays.length > NAMED ? ` and ${strays.length - NAMED} more` : '');
    warnings.push(`Readings outside the outline, counted from 0: ${named}. They count in the mean and not by place; check where they were taken.`);
  }
  if (unplaced > 0) warnings.push(`${unplaced} readings have no place: they count in the mean and not by place.`);
  if (shared > 0) warnings.push(`${shared} readings share their place with an earlier one; the mean of them stands there.`);
  warnings.push(...errorWarnings(error));
  const larger = Math.max(mean.sedimentM3, triangulated.sedimentM3);
  if (Math.abs(mean.sedimentM3 - triangulated.sedimentM3) > APART * larger) {
    warnings.push(`By the mean and by place the sediment differs by ${((100 * Math.abs(mean.sedimentM3 - triangulated.sedimentM3)) / larger).toFixed(0)} %: the readings are not spread evenly, or the edge (${edge.kind}) is not as the readings are. Take both as bounds, or take readings at the shore.`);
  }
  if (Math.abs(triangulated.areaM2 / areaM2 - 1) > UNCOVERED) {
    warnings.push(`The triangles cover ${((100 * triangulated.areaM2) / areaM2).toFixed(1)} % of the outline: it has parts too thin to triangulate. Leave them out of the outline.`);
  }
  if (triangulated.unreadAreaM2 > UNREAD * areaM2) {
    warnings.push(`${((100 * triangulated.unreadAreaM2) / areaM2).toFixed(0)} % of the surface lies between shore points with no reading near (bays, arms, corners) and goes by the choice of the edge alone: take readings there.`);
  }
  return warnings;
}
