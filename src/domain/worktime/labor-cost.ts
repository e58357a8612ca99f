import { Decimal } from '../decimal.js';
import { DomainError } from '../errors.js';

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
  // Divided last, once: minutes / 60 has no finite decimal, and the whole product usually has.
  return new Decimal(minutes).times(hourlyWage).times(percent).div(6_000);
}
