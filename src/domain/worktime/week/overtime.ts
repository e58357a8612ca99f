import { Decimal, sumDecimals } from '../../decimal.js';
import { DomainError } from '../../errors.js';

/** From how many hours on overtime is due; null is never. */
export interface OvertimeThresholds {
  /** Hours in a workweek: 40 by US federal law. */
  readonly weeklyHours: Decimal | null;
  /** Hours in a workday: a state's rule or the company's own; federal law has none. */
  readonly dailyHours: Decimal | null;
}

/**
 * Time of a workweek that is overtime, unrounded and in the unit that it is given in. Time beyond both thresholds counts
 * once: what is over the day is taken out of the week before the week's own threshold is looked at, which comes to the
 * larger of the two.
 * @param timeByDay worked in each workday of one workweek, none negative
 * @param perHour how many of its unit are an hour: 60 for minutes
 * @throws DomainError at /timeByDay/i
 * @see 29 CFR 778.102 (over 40 hours in the week, no daily rule), 778.104 (each week stands alone)
 */
export function overtimeIn(timeByDay: readonly Decimal[], { weeklyHours, dailyHours }: OvertimeThresholds, perHour: number): Decimal {
  timeByDay.forEach((time, index) => {
    if (!time.gte(0)) throw DomainError.at(`/timeByDay/${index}`, 'This must be 0 or more.');
  });
  const over = (time: Decimal, hours: Decimal | null): Decimal => (hours === null ? new Decimal(0) : Decimal.max(0, time.minus(hours.times(perHour))));
  const overDay = sumDecimals(timeByDay.map((time) => over(time, dailyHours)));
  return Decimal.max(overDay, over(sumDecimals(timeByDay), weeklyHours));
}

/**
 * Pay of a workweek for an hour of it, unrounded: with several wages their average, weighted by hours.
 * @param remuneration all pay of the week that overtime counts on: wages, bonuses for production, commissions
 * @param hours hours worked in the week, or the hours that a salary is for; above 0
 * @throws DomainError at /remuneration or /hours
 * @see 29 CFR 778.109, 778.113(a), 778.115
 */
export function regularRate(remuneration: Decimal, hours: Decimal): Decimal {
  requirePay(remuneration);
  if (!hours.gt(0)) throw DomainError.at('/hours', 'There is no rate without hours; they must be more than 0.');
  return new Decimal(remuneration).div(hours);
}

/**
 * What overtime adds, unrounded, where straight time is paid for all hours: half the regular rate for each hour of it.
 * Divided once, at the end: a rate rounded to the cent first can come out a cent short.
 * @throws DomainError at /remuneration, /hours or /overtimeHours (negative, or more than the hours)
 * @see 29 CFR 778.110, 778.111, 778.118
 */
export function overtimePremium(remuneration: Decimal, hours: Decimal, overtimeHours: Decimal): Decimal {
  requirePay(remuneration);
  if (!overtimeHours.gte(0) || overtimeHours.gt(hours)) throw DomainError.at('/overtimeHours', 'Overtime must be 0 or more and not more than the hours worked.');
  return overtimeHours.isZero() ? new Decimal(0) : new Decimal(remuneration).times(overtimeHours).div(new Decimal(hours).times(2));
}

function requirePay(remuneration: Decimal): void {
  if (!remuneration.gte(0)) throw DomainError.at('/remuneration', 'Pay must be 0 or more.');
}
