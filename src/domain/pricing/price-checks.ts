import { decimal, type Decimal } from '../decimal.js';
import { DomainError } from '../errors.js';
import { roundMoney, requireWithinLimit } from '../money/index.js';

/** @throws DomainError at `pointer` unless 0 <= value */
export function requireNotNegative(value: Decimal, pointer: string): void {
  if (value.isFinite() && value.gte(0)) return;
  throw DomainError.at(pointer, 'This must be 0 or more.');
}

/** @throws DomainError at `pointer` unless 0 < value */
export function requirePositive(value: Decimal, pointer: string): void {
  if (value.isFinite() && value.gt(0)) return;
  throw DomainError.at(pointer, 'This must be above 0.');
}

/** What no company of people works in a life. */
const MOST_HOURS = 10_000_000;

/** @throws DomainError at `pointer` when it takes more hours than can be planned */
export function requirePlannable(hours: Decimal, pointer: string): void {
  if (hours.lte(MOST_HOURS)) return;
  throw DomainError.at(pointer, `This line would take ${hours.toFixed(0)} hours, and at most ${MOST_HOURS} can be planned; check the rule's hours per unit and the quantity.`);
}

/**
 * The product rounded once to the minor unit.
 * @throws DomainError at `pointer`, the factor a person would correct, when the product is more than money can hold
 */
export function amountOf(factor: Decimal, price: Decimal, currency: string, pointer: string): Decimal {
  const amount = roundMoney(decimal(factor).times(price), currency);
  try {
    requireWithinLimit(amount);
  } catch {
    throw DomainError.at(pointer, 'The amount of this line would be too large; check the quantity and the price.');
  }
  return amount;
}
