import { Decimal } from '../../decimal.js';
import { DomainError } from '../../errors.js';
import { roundMoney } from '../../money/index.js';

/** One thing that an employer pays on top of wages: a tax, a contribution, an insurance. */
export interface BurdenComponent {
  readonly code: string;
  /** Percent of the wages it is counted on: 6.2 is 6.2 %. */
  readonly percent: Decimal;
  /** It is due on this much of a person's wages in a calendar year and on nothing beyond; null is no end. */
  readonly yearlyWageCap: Decimal | null;
  /** Some insurers and states leave the overtime premium out. */
  readonly base: 'all-pay' | 'straight-pay';
}

/**
 * One component on the wages of a week, rounded half up to the minor unit.
 * @param wages of the week, 0 or more
 * @param wagesBefore of the same person, in the same calendar year, before that week; 0 or more
 * @throws DomainError at /wages, /wagesBefore or /percent when negative
 * @see 26 USC 3111, 3301, 3306(b)(1): a rate, and the wages of a year that it ends at
 */
export function burdenOn({ percent, yearlyWageCap }: Pick<BurdenComponent, 'percent' | 'yearlyWageCap'>, wages: Decimal, wagesBefore: Decimal, currency: string): Decimal {
  for (const [name, value] of Object.entries({ wages, wagesBefore, percent })) {
    if (!value.gte(0)) throw DomainError.at(`/${name}`, 'This must be 0 or more.');
  }
  const left = yearlyWageCap === null ? wages : Decimal.max(0, yearlyWageCap.minus(wagesBefore));
  return roundMoney(Decimal.min(wages, left).times(percent).div(100), currency);
}
