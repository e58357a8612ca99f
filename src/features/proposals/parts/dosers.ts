import { Decimal } from '../../../domain/decimal.js';
import { toSi } from '../../../domain/quantity/index.js';
import { USUAL_RESERVOIR_WEEKS } from '../../../domain/trade/filtration/index.js';
import type { PartEntity } from '../../catalog/index.js';
import { type Choice, choose } from '../choice.js';

/** Dosers whose reservoir lasts at least as long as is usual. The label of what is dosed decides the dose. */
export function chooseDosers(parts: readonly PartEntity[]): Choice {
  return choose(parts, ({ attributes }) => {
    if (attributes?.kind !== 'doser' || !attributes.reservoirVolume || !attributes.dosePerDay) return { reason: 'Its reservoir and its dose in a day are not in the catalog.' };
    const weeks = toSi(attributes.reservoirVolume) / toSi(attributes.dosePerDay) / 7;
    const { least, most } = USUAL_RESERVOIR_WEEKS;
    if (weeks < least) return { reason: `Its reservoir lasts ${weeks.toFixed(1)} weeks; ${least} to ${most} are usual (common practice).` };
    return { quantity: new Decimal(1), why: `Its reservoir lasts ${weeks.toFixed(1)} weeks at its dose rate.` };
  });
}
