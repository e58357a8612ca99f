import { fromSi } from '../../../domain/quantity/index.js';
import { stoneEdge, USUAL_EDGE } from '../../../domain/trade/stone/index.js';
import type { PartEntity } from '../../catalog/index.js';
import { type Choice, choose, inPartUnit } from '../choice.js';

export interface EdgeWanted {
  readonly lengthM: number;
  readonly heightM: number;
  readonly thicknessM: number;
  readonly reclaimedKg: number;
}

/** The stone that the edge takes, less what is reclaimed; a part's own density counts for it. */
export function chooseEdgeStone(parts: readonly PartEntity[], wanted: EdgeWanted): Choice {
  return choose(parts, (part) => {
    const own = part.attributes?.kind === 'stone' ? part.attributes.densityKgPerM3 : null;
    const edge = stoneEdge({ ...USUAL_EDGE, ...wanted, densityKgPerM3: own ?? USUAL_EDGE.densityKgPerM3 });
    const quantity = inPartUnit(edge.toBuyKg, 'mass', part);
    if (quantity === null) return { reason: `It is sold by ${part.unit}, not by weight.` };
    if (quantity.isZero()) return { reason: 'Nothing is to be bought: the reclaimed stone is enough.' };
    const shown = (kg: number): string => `${fromSi(kg, part.unit).toFixed(2)} ${part.unit}`;
    return { quantity, why: `${shown(edge.massKg)} for the edge${wanted.reclaimedKg > 0 ? `, less ${shown(Math.min(edge.massKg, wanted.reclaimedKg))} of reclaimed stone` : ''}.` };
  });
}
