import { Decimal, sumDecimals } from '../../decimal.js';
import { roundMoney } from '../../money/index.js';
import { MS_PER_HOUR, type PaidTime, type PayTerms, weekPay } from './week-pay.js';

/** What a person had earned in the calendar year before a week: where a yearly cap stands. Whole minor units. */
export interface EarnedBefore {
  readonly allPay: Decimal;
  readonly straightPay: Decimal;
}

/** What the payroll kept elsewhere says of a year up to a day, hours that are kept here up to that day among it. */
export interface OpeningWages extends EarnedBefore {
  /** The last of its days, as workdays are named. */
  readonly through: string;
}

export interface PaidWeek {
  /** Its workdays named so that they sort by time, as YYYY-MM-DD does. */
  readonly time: readonly PaidTime[];
  readonly terms: PayTerms;
}

export const NOTHING_EARNED: EarnedBefore = { allPay: new Decimal(0), straightPay: new Decimal(0) };

/**
 * What had been earned before each week of a calendar year: the opening wages less what hours kept here had earned by
 * their day, so that no hour counts twice, and what hours kept here earned since the year began. Opening wages below
 * what the hours kept here come to change nothing.
 * @param weeks of one person and one calendar year, in order
 */
export function yearToDate(weeks: readonly PaidWeek[], opening: OpeningWages | null): EarnedBefore[] {
  const paid = weeks.map(({ time, terms }) => earned(time, terms));
  let sum = opening === null ? NOTHING_EARNED : beyond(opening, weeks.map(({ time, terms }, index) => upTo(opening.through, time, paid[index] ?? NOTHING_EARNED, terms)));
  return paid.map((week) => {
    const before = sum;
    sum = { allPay: sum.allPay.plus(week.allPay), straightPay: sum.straightPay.plus(week.straightPay) };
    return before;
  });
}

function earned(time: readonly PaidTime[], terms: PayTerms): EarnedBefore {
  const { straightPay, premium } = weekPay(time, terms);
  return { straightPay, allPay: straightPay.plus(premium) };
}

/** A week's pay up to a day in the midst of it: its wages, and the premium by the minute. */
function upTo(day: string, time: readonly PaidTime[], whole: EarnedBefore, { currency }: PayTerms): EarnedBefore {
  const then = time.filter(({ workday }) => workday <= day);
  if (then.length === time.length) return whole;
  const [all, part] = [time, then].map((list) => list.reduce((sum, { milliseconds }) => sum + milliseconds, 0)) as [number, number];
  const straightPay = roundMoney(sumDecimals(then.map(({ hourlyWage, milliseconds }) => hourlyWage.times(milliseconds))).div(MS_PER_HOUR), currency);
  const premium = part === 0 ? new Decimal(0) : roundMoney(whole.allPay.minus(whole.straightPay).times(part).div(all), currency);
  return { straightPay, allPay: straightPay.plus(premium) };
}

function beyond(opening: EarnedBefore, here: readonly EarnedBefore[]): EarnedBefore {
  const over = (of: keyof EarnedBefore): Decimal => Decimal.max(0, opening[of].minus(sumDecimals(here.map((week) => week[of]))));
  return { allPay: over('allPay'), straightPay: over('straightPay') };
}
