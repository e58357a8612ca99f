import { Decimal } from '../../../domain/decimal.js';
import { toSi } from '../../../domain/quantity/index.js';
import { shownFlow, type VesselLoss } from '../../../domain/trade/hydraulics/index.js';
import type { PartEntity } from '../../catalog/index.js';
import { type Choice, choose, type Line } from '../choice.js';

/** Beyond it a maker's figure is wrong, or the part is for another pond. */
export const MOST_SHARING = 10;

/** Skimmers, or filters, whose flow limits take a flow. @param from what gives the flow, as a sentence says it */
export function chooseByFlow(parts: readonly PartEntity[], flowM3PerS: number, from: string): Choice {
  return choose(parts, (part) => {
    const { least, most } = flowLimits(part);
    if (most === null) return { reason: 'Its flow limits are not in the catalog.' };
    const count = sharing(part, flowM3PerS);
    if (count > MOST_SHARING) return { reason: `It takes up to ${shownFlow(most)}: more than ${MOST_SHARING} of them would have to share the flow.` };
    const each = flowM3PerS / count;
    if (least !== null && each < least) return { reason: `It needs at least ${shownFlow(least)}; each would get ${shownFlow(each)}.` };
    return { quantity: new Decimal(count), why: `Each takes up to ${shownFlow(most)}; ${from} ${shownFlow(flowM3PerS)}.` };
  });
}

/** m3/s; null where the catalog states none. */
export function flowLimits({ attributes }: PartEntity): { least: number | null; most: number | null } {
  if (attributes?.kind !== 'skimmer' && attributes?.kind !== 'filter' && attributes?.kind !== 'spillway') return { least: null, most: null };
  return { least: attributes.flowMinimum ? toSi(attributes.flowMinimum) : null, most: attributes.flowMaximum ? toSi(attributes.flowMaximum) : null };
}

/** How many of a kind share a flow alike, so that none gets more than it takes. */
export function sharing(part: PartEntity, flowM3PerS: number): number {
  const { most } = flowLimits(part);
  return most === null ? 1 : Math.max(1, Math.ceil(flowM3PerS / most - 1e-9));
}

/** What so many of a skimmer or filter side by side take from the pump: each gets its share. Null when the catalog does not say. */
export function vesselLoss({ part, quantity }: Line): VesselLoss | null {
  const { attributes } = part;
  if ((attributes?.kind !== 'skimmer' && attributes?.kind !== 'filter') || !attributes.headLoss || !attributes.headLossFlow) return null;
  return { name: quantity.eq(1) ? part.name : `${quantity.toFixed()} × ${part.name}`, flowM3PerS: toSi(attributes.headLossFlow) * quantity.toNumber(), headM: toSi(attributes.headLoss) };
}
