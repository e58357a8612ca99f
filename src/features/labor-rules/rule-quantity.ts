import { type QuantityKind, unitsOf } from '../../domain/quantity/index.js';
import { isTakeoffQuantity, TAKEOFF_QUANTITIES, takeoffKind, type TakeoffQuantityName } from '../../domain/trade/index.js';
import { invalidInput } from '../../platform/http/problems.js';

/** What a rule counts: a quantity of the takeoff, or things whose number the quote says itself. */
export type RuleQuantity = TakeoffQuantityName | 'count';

export const RULE_QUANTITIES: readonly RuleQuantity[] = [...TAKEOFF_QUANTITIES, 'count'];

export function ruleQuantityKind(quantity: RuleQuantity): QuantityKind {
  return isTakeoffQuantity(quantity) ? takeoffKind(quantity) : 'count';
}

/**
 * Hours per foot can't be multiplied by a volume: a rule is stated in a unit of its own quantity.
 * @throws Problem 400 at /unit, listing the units
 */
export function requireRuleUnit({ quantity, unit }: { readonly quantity: RuleQuantity; readonly unit: string }): void {
  const units: readonly string[] = unitsOf(ruleQuantityKind(quantity));
  if (!units.includes(unit)) throw invalidInput([{ pointer: '/unit', detail: `must be a unit of ${quantity}: ${units.join(', ')}` }]);
}
