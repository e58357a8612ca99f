import type { Quantity, QuantityKind } from '../../../domain/quantity/index.js';
import { ChoiceField, QuantityField } from '../../../platform/http/fields/index.js';
import type { PartKind } from './part-kinds.js';

/** The kind that a class of attributes is for; it tells the classes apart. */
export function Kind(kind: PartKind): PropertyDecorator {
  return ChoiceField({ description: 'The kind of part; it decides which attributes there can be.', of: [kind], example: kind });
}

interface OptionalQuantity {
  readonly kind: QuantityKind;
  readonly minSi: number;
  readonly maxSi: number;
  readonly optional: true;
}

/** @param minSi in m @param maxSi in m */
export function optionalLength(minSi: number, maxSi: number): OptionalQuantity {
  return { kind: 'length', minSi, maxSi, optional: true };
}

const FLOW: OptionalQuantity = { kind: 'flow', minSi: 0, maxSi: 10, optional: true };

/** Between which flows a thing works. */
export class FlowLimits {
  @QuantityField({ description: 'The least flow that it works with.', ...FLOW })
  flowMinimum?: Quantity | null;

  @QuantityField({ description: 'The most flow that it takes; not less than the least.', ...FLOW })
  flowMaximum?: Quantity | null;
}

/** A vessel that the whole flow of the loop goes through. */
export class FlowVessel extends FlowLimits {
  @QuantityField({ description: 'The head that it takes from the pump at one flow, which is headLossFlow; at others it goes with the square of the flow.', ...optionalLength(0, 100) })
  headLoss?: Quantity | null;

  @QuantityField({ description: 'The flow at which headLoss is known.', ...FLOW, minSi: 1e-6 })
  headLossFlow?: Quantity | null;
}
