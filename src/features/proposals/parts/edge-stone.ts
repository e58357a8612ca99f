import { stoneEdge, type StoneEdge } from '../../../domain/trade/stone/index.js';
import type { PartEntity } from '../../catalog/index.js';
import { type Choice, choose, inPartUnit } from '../choice.js';

export interface EdgeWanted {
  readonly perimeterM: number;
  readonly heightM: number;
  readonly thicknessM: number;
  readonly reclaimedKg: number;
}

/** 165 lb/ft3 and 30 % of gaps: see the calculation of a stone edge. */
const ROCK_KG_PER_M3 = 2643;
const GAPS = 0.3;

/** The stone that the edge takes, less what is reclaimed; a part's own density counts for it. */
export function edgeOf(wanted: EdgeWanted, densityKgPerM3 = ROCK_KG_PER_M3): StoneEdge {
  const { perimeterM, heightM, thicknessM, reclaimedKg } = wanted;
  return stoneEdge({ lengthM: perimeterM, heightM, thicknessM, densityKgPerM3, voidFraction: GAPS, reclaimedKg });
}

export function chooseEdgeStone(parts: readonly PartEntity[], wanted: EdgeWanted): Choice {
  return choose(parts, (part) => {
    const density = part.attributes?.kind === 'stone' ? (part.attributes.densityKgPerM3 ?? ROCK_KG_PER_M3) : ROCK_KG_PER_M3;
    const edge = edgeOf(wanted, density);
    const quantity = inPartUnit(edge.toBuyKg, 'mass', part);
    if (quantity === null) return { reason: `It is sold by ${part.unit}, not by weight.` };
    if (quantity.isZero()) return { reason: 'Nothing is to be bought: the reclaimed stone is enough.' };
    return { quantity, why: `${Math.round(edge.massKg)} kg for the edge${wanted.reclaimedKg > 0 ? `, less ${Math.round(Math.min(edge.massKg, wanted.reclaimedKg))} kg of reclaimed stone` : ''}.` };
  });
}
