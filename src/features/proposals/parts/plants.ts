import { Decimal } from '../../../domain/decimal.js';
import { type Quantity, toSi } from '../../../domain/quantity/index.js';
import type { PartEntity } from '../../catalog/index.js';
import type { SurveyEntity } from '../../surveys/index.js';
import { type Choice, choose } from '../choice.js';
import { shareWithin } from './depth-share.js';
import { feet, inches, squareFeet } from './shown.js';

export interface PlantsWanted {
  readonly surfaceM2: number;
  /** Of the surface, 0 to 1. */
  readonly cover: number;
  /** Plants on the site that are divided and set again; each stands for one. */
  readonly reclaimed: number;
  readonly depthProfile: SurveyEntity['depthProfile'];
  /** m; null when no depth was measured. */
  readonly deepestM: number | null;
}

/** How many of one sort cover the wanted share of the surface when grown, less those that are set again. */
export function choosePlants(parts: readonly PartEntity[], { surfaceM2, cover, reclaimed, depthProfile, deepestM }: PlantsWanted): Choice {
  const coverM2 = cover * surfaceM2;
  return choose(parts, ({ attributes, unit }) => {
    if (unit !== 'each') return { reason: `It is sold by ${unit}, not by the piece.` };
    if (attributes?.kind !== 'plant' || !attributes.coverArea) return { reason: 'The surface that one covers is not in the catalog.' };
    const [leastM, mostM] = [inM(attributes.depthMinimum) ?? 0, inM(attributes.depthMaximum) ?? Infinity];
    if (deepestM !== null && leastM > deepestM) return { reason: `It stands at least ${inches(leastM)} deep; the pond is ${feet(deepestM)} at the most.` };
    const share = depthProfile === null ? null : shareWithin(depthProfile, leastM, mostM);
    if (share === 0) return { reason: `Nowhere on the surveyed profile is a place ${depths(leastM, mostM)} deep.` };
    const each = toSi(attributes.coverArea);
    const needed = Math.ceil(coverM2 / each - 1e-9);
    const missing = needed - reclaimed;
    if (missing <= 0) return { reason: needed === 0 ? 'No cover is wanted.' : `Nothing is to be bought: ${reclaimed} are set again, and ${needed} are enough.` };
    const less = reclaimed > 0 ? `, less ${reclaimed} that are set again` : '';
    const tight = share !== null && share < cover ? [`Only ${(share * 100).toFixed(0)} % of the surveyed profile is ${depths(leastM, mostM)} deep: not all of the plants will find their depth. Build a shelf, or mix sorts.`] : [];
    return { quantity: new Decimal(missing), why: `${needed} cover ${squareFeet(coverM2)}, ${(cover * 100).toFixed(0)} % of the surface, at ${squareFeet(each)} each when grown${less}.`, cautions: tight };
  });
}

function inM(quantity: Quantity | null | undefined): number | null {
  return quantity ? toSi(quantity) : null;
}

function depths(leastM: number, mostM: number): string {
  if (leastM === mostM) return inches(leastM);
  return mostM === Infinity ? `${inches(leastM)} or more` : `${inches(leastM)} to ${inches(mostM)}`;
}
