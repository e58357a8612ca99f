import { Decimal, sumDecimals } from '../decimal.js';
import { DomainError } from '../errors.js';
import { minorUnits } from './currency.js';

/** Wide enough that a total times a 40-digit weight is exact: a rounded remainder would hand out the wrong cent. */
const Wide = Decimal.clone({ precision: 240, rounding: Decimal.ROUND_DOWN });

/**
 * Splits a total by weights so that the shares add up to it exactly: each share rounded towards zero to the minor
 * unit, the cents left over to the largest remainders, ties to the earliest. A negative total is split as its positive
 * and the sign restored, so a credit takes back the very shares that were charged.
 *
 * @param total whole minor units of `currency`
 * @param weights none negative, not all zero unless the total is zero; a zero weight gets nothing
 * @returns one share a weight, in their order
 * @throws DomainError at /total, /weights or /weights/i
 * @see electowiki, "Hamilton method" (largest remainder)
 */
export function allocate(total: Decimal, weights: readonly Decimal[], currency: string): Decimal[] {
  const digits = minorUnits(currency);
  if (total.decimalPlaces() > digits) throw DomainError.at('/total', `The total may have at most ${digits} decimals.`);
  weights.forEach((weight, index) => {
    if (!weight.gte(0) || !weight.isFinite()) throw DomainError.at(`/weights/${index}`, 'A weight must be 0 or more.');
  });
  const sum = weights.reduce((partial, weight) => partial.plus(weight), new Wide(0));
  if (sum.isZero()) {
    if (!total.isZero()) throw DomainError.at('/weights', 'At least one weight must be above 0 to split an amount.');
    return weights.map(() => new Decimal(0));
  }
  const cents = new Wide(total).abs().times(new Wide(10).pow(digits));
  const shares = weights.map((weight, index) => {
    const scaled = cents.times(new Wide(weight));
    const whole = scaled.divToInt(sum);
    return { index, whole, remainder: scaled.minus(whole.times(sum)) };
  });
  let left = cents.minus(sumDecimals(shares.map((share) => share.whole))).toNumber();
  const byRemainder = [...shares].sort((a, b) => b.remainder.cmp(a.remainder) || a.index - b.index);
  for (const share of byRemainder) {
    if (left <= 0) break;
    share.whole = share.whole.plus(1);
    left -= 1;
  }
  const unit = new Decimal(10).pow(-digits).times(total.isNegative() ? -1 : 1);
  return shares.map(({ whole }) => (whole.isZero() ? new Decimal(0) : new Decimal(whole).times(unit)));
}
