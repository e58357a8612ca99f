import { Decimal } from '../decimal.js';
import { DomainError } from '../errors.js';

/**
 * How near to an increment counts as that increment, in hours. A quantity arrives as a binary number; its dust must
 * not push 20.5 h to 20.75 h on one machine and not on another.
 */
const TOLERANCE = new Decimal('1e-9');

/**
 * Hours rounded up to a whole number of increments.
 * @param hours 0 or more
 * @param increment hours, above 0
 * @throws DomainError at /hours or /increment
 */
export function roundUpToIncrement(hours: Decimal, increment: Decimal): Decimal {
  if (!hours.gte(0) || !hours.isFinite()) throw DomainError.at('/hours', 'Hours must be 0 or more.');
  if (!increment.gt(0) || !increment.isFinite()) throw DomainError.at('/increment', 'An increment must be above 0.');
  const whole = new Decimal(hours).divToInt(increment);
  const below = whole.times(increment);
  return new Decimal(hours).minus(below).lte(TOLERANCE) ? below : below.plus(increment);
}
