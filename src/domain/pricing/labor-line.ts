import { Decimal, decimal, plain } from '../decimal.js';
import { DomainError, within } from '../errors.js';
import { convert, type Unit } from '../quantity/index.js';
import { roundUpToIncrement } from './increment.js';
import type { LaborLine, LaborLineInput, LaborQuantity } from './labor-types.js';
import { laborWorking } from './labor-working.js';
import { amountOf, requireNotNegative, requirePlannable, requirePositive } from './price-checks.js';

/**
 * Hours = max(minimum, setup + hours per unit × quantity) × access factor, rounded up to the hour increment; amount =
 * hours × sell rate, rounded half up.
 * @throws DomainError at /quantity (missing, of another kind than the rule's unit, negative, or too much to price),
 *   /rule/..., /accessFactor, /hourIncrement or /sellRate
 */
export function laborLine(input: LaborLineInput): LaborLine {
  const { rule, accessFactor, hourIncrement, sellRate, currency } = input;
  requireNotNegative(rule.setupHours, '/rule/setupHours');
  requireNotNegative(rule.hoursPerUnit, '/rule/hoursPerUnit');
  requireNotNegative(rule.minimumHours, '/rule/minimumHours');
  requirePositive(accessFactor, '/accessFactor');
  requirePositive(hourIncrement, '/hourIncrement');
  requireNotNegative(sellRate, '/sellRate');
  const quantity = inRuleUnit(input.quantity, rule.unit);
  const byQuantity = decimal(quantity ?? 0).times(rule.hoursPerUnit).plus(rule.setupHours);
  const before = Decimal.max(rule.minimumHours, byQuantity);
  const exact = before.times(accessFactor);
  const hours = roundUpToIncrement(exact, hourIncrement);
  requirePlannable(hours, '/quantity');
  const amount = amountOf(hours, sellRate, currency, '/quantity');
  const working = laborWorking(input, { quantity: quantity === null ? null : plain(quantity), byQuantity, before, exact, hours, amount });
  return { hours, unitPrice: sellRate, amount, quantityInRuleUnit: quantity, working };
}

function inRuleUnit(quantity: LaborQuantity | null, unit: Unit | null): number | null {
  if (unit === null) {
    if (quantity === null) return null;
    throw DomainError.at('/rule/unit', 'The rule counts no quantity; give it a unit, or price it without a quantity.');
  }
  if (quantity === null) throw DomainError.at('/quantity', `The rule counts ${unit}; a takeoff quantity is needed.`);
  const value = within('/quantity', () => convert(quantity.value, quantity.unit, unit));
  if (value >= 0) return value;
  throw DomainError.at('/quantity/value', 'A quantity to be priced must be 0 or more.');
}
