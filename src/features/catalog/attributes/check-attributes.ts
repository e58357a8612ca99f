import { DomainError, within } from '../../../domain/errors.js';
import { type Quantity, toSi } from '../../../domain/quantity/index.js';
import { requireFallingCurve } from '../../../domain/trade/pump-curve/index.js';
import type { PartAttributes } from './part-attributes.js';
import type { DoserAttributes } from './pond-attributes.dto.js';

/**
 * What no field can tell alone.
 * @throws DomainError with pointers into the attributes, such as /curve/2/head
 */
export function requireSoundAttributes(attributes: PartAttributes): void {
  switch (attributes.kind) {
    case 'pump': {
      const { curve } = attributes;
      if (curve) within('/curve', () => requireFallingCurve(curve.map(({ flow, head }) => ({ flowM3PerS: toSi(flow), headM: toSi(head) }))));
      return;
    }
    case 'skimmer':
    case 'filter':
      requireTogether(attributes.headLoss, attributes.headLossFlow);
      return requireOrder(attributes.flowMinimum, attributes.flowMaximum, 'flow');
    case 'spillway':
      return requireOrder(attributes.flowMinimum, attributes.flowMaximum, 'flow');
    case 'doser':
      return requireDose(attributes);
    case 'plant':
      return requireOrder(attributes.depthMinimum, attributes.depthMaximum, 'depth');
    default:
  }
}

function requireOrder(least: Quantity | null | undefined, most: Quantity | null | undefined, of: 'flow' | 'depth'): void {
  if (!least || !most || toSi(least) <= toSi(most)) return;
  throw DomainError.at(`/${of}Maximum`, `must not be less than ${of}Minimum; exchange them, or mend one`);
}

/** A loss without its flow, or a flow without its loss, would be left out of every pump's system without a word. */
function requireTogether(loss: Quantity | null | undefined, flow: Quantity | null | undefined): void {
  if (loss && !flow) throw DomainError.at('/headLossFlow', 'is missing; a head loss is known at one flow: give it, or take headLoss away');
  if (flow && !loss) throw DomainError.at('/headLoss', 'is missing; say what head it takes at headLossFlow, or take headLossFlow away');
}

function requireDose({ dosePerDay, doseFor }: DoserAttributes): void {
  if (doseFor && !dosePerDay) throw DomainError.at('/dosePerDay', 'is missing; say how much is given in a day for the water of doseFor, or take doseFor away');
}
