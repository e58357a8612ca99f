import { Decimal } from '../decimal.js';
import { DomainError } from '../errors.js';

const MS_PER_MINUTE = 60_000;

/**
 * What paid minutes cost the company: wage and burden (employer taxes, insurance) on it, in the wage's currency and
 * unrounded, so that many short entries do not add up a cent each; round the sum.
 * @param hourlyWage per hour, 0 or more
 * @param burdenPercent percent on the wage, 0 or more: 22.5 is 22.5 %
 * @throws DomainError at /minutes, /hourlyWage or /burdenPercent when negative
 */
export function laborCost(minutes: Decimal, hourlyWage: Decimal, burdenPercent: Decimal): Decimal {
  const inputs = { minutes, hourlyWage, burdenPercent };
  for (const [name, value] of Object.entries(inputs)) {
    if (!value.gte(0)) throw DomainError.at(`/${name}`, 'This must be 0 or more.');
  }
  const percent = new Decimal(burdenPercent).plus(100);
  // Seconds are no finite decimal of a minute, but whole milliseconds: taken back to them, and divided last, once, a half
  // cent stays one.
  const milliseconds = new Decimal(minutes).times(MS_PER_MINUTE).toDecimalPlaces(6);
  return milliseconds.times(hourlyWage).times(percent).div(100 * 60 * MS_PER_MINUTE);
}
