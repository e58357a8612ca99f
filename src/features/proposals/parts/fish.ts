import { Decimal } from '../../../domain/decimal.js';
import { toSi } from '../../../domain/quantity/index.js';
import { fishLoad, stateAt } from '../../../domain/trade/life/index.js';
import type { PartEntity } from '../../catalog/index.js';
import { type Choice, choose } from '../choice.js';
import { pounds } from './shown.js';

export interface FishWanted {
  readonly netWaterM3: number;
  readonly surfaceM2: number;
  /** Of the filter; null when it is unknown. */
  readonly mediaAreaM2: number | null;
  readonly aerated: boolean;
  /** Grown; 0 when there are none. */
  readonly thereKg: number;
  /** degC, of the survey's water tests. */
  readonly temperaturesC: readonly number[];
}

/** As the calculation of the fish load has it where nothing else is said: common practice. */
export const USUAL_FEED = { feedPercentPerDay: 1, proteinPercent: 35, nitrificationGPerM2Day: 0.3 };

export interface FishChoice extends Choice {
  readonly warnings: readonly string[];
}

/** How many of one sort the water and the filter carry when grown, beside the fish that are there. */
export function chooseFish(parts: readonly PartEntity[], { netWaterM3, surfaceM2, mediaAreaM2, aerated, thereKg, temperaturesC }: FishWanted): FishChoice {
  // The limits are the same for any fish; without any, the rule still asks for a weight.
  const { tightest, warnings } = fishLoad({ fishKg: Math.max(thereKg, 1e-6), volumeM3: netWaterM3, surfaceM2, mediaAreaM2, aerated, ...USUAL_FEED });
  const roomKg = tightest.mostFishKg - thereKg;
  const carried = `${tightest.measure} carries ${pounds(tightest.mostFishKg)} (${tightest.basis})`;
  const choice = choose(parts, ({ attributes, unit }) => {
    if (unit !== 'each') return { reason: `It is sold by ${unit}, not by the piece.` };
    if (attributes?.kind !== 'fish' || !attributes.grownMass) return { reason: 'What one weighs when grown is not in the catalog.' };
    const { species } = attributes;
    const deadly = species ? temperaturesC.find((celsius) => stateAt(species, celsius).startsWith('deadly')) : undefined;
    if (deadly !== undefined) return { reason: `At ${deadly.toFixed(1)} degC, as a water test found, ${species} dies within days.` };
    const eachKg = toSi(attributes.grownMass);
    const most = Math.floor(roomKg / eachKg + 1e-9);
    if (most < 1) return { reason: `One weighs ${pounds(eachKg)} when grown; the ${carried}, and ${pounds(thereKg)} are there.` };
    return { quantity: new Decimal(most), why: `At most: the ${carried}${thereKg > 0 ? `, less ${pounds(thereKg)} that are there` : ''}; each weighs ${pounds(eachKg)} when grown.` };
  });
  return { ...choice, warnings };
}
