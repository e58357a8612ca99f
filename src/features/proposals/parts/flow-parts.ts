import { Decimal } from '../../../domain/decimal.js';
import { toSi } from '../../../domain/quantity/index.js';
import { shownFlow } from '../../../domain/trade/hydraulics/index.js';
import type { PartEntity } from '../../catalog/index.js';
import { type Choice, choose } from '../choice.js';

/** Skimmers, or filters, whose flow limits take the flow of the loop. @param flowM3PerS that turns the water over as wanted */
export function chooseByFlow(parts: readonly PartEntity[], flowM3PerS: number): Choice {
  return choose(parts, ({ attributes }) => {
    if (attributes?.kind !== 'skimmer' && attributes?.kind !== 'filter') return { reason: 'Its flow limits are not in the catalog.' };
    const least = attributes.flowMinimum ? toSi(attributes.flowMinimum) : null;
    const most = attributes.flowMaximum ? toSi(attributes.flowMaximum) : null;
    if (most === null) return { reason: 'Its flow limits are not in the catalog.' };
    // Several of a kind share the flow alike.
    const count = Math.max(1, Math.ceil(flowM3PerS / most - 1e-9));
    const each = flowM3PerS / count;
    if (least !== null && each < least) return { reason: `It needs at least ${shownFlow(least)}; each would get ${shownFlow(each)}.` };
    return { quantity: new Decimal(count), why: `Each takes up to ${shownFlow(most)}; the loop gives ${shownFlow(flowM3PerS)}.` };
  });
}
