import { DomainError, within } from '../../../domain/errors.js';
import { type Quantity, toSi } from '../../../domain/quantity/index.js';
import { requireFallingCurve } from '../../../domain/trade/pump-curve/index.js';
import type { PartAttributes } from './part-attributes.js';

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
      return requireOrder(attributes.flowMinimum, attributes.flowMaximum);
    default:
  }
}

function requireOrder(least: Quantity | null | undefined, most: Quantity | null | undefined): void {
  if (!least || !most || toSi(least) <= toSi(most)) return;
  throw DomainError.at('/flowMaximum', 'must not be less than flowMinimum; exchange them, or mend one');
}
