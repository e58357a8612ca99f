import { Decimal, sumDecimals } from '../../decimal.js';
import { roundMoney } from '../../money/index.js';
import { type OvertimeThresholds, overtimeIn, overtimePremium } from './overtime.js';

/** Time of one person within one workday at one wage. */
export interface PaidTime {
  /** Which workday; any text that is the same for all time of one. Without daily thresholds it does not matter. */
  readonly workday: string;
  /** That count as worked; whole, so that sums of them are exact whatever they are summed by. */
  readonly milliseconds: number;
  readonly hourlyWage: Decimal;
}

export interface PayTerms {
  readonly currency: string;
  readonly thresholds: OvertimeThresholds;
}

/** What is paid for a workweek. Amounts in whole minor units unless told otherwise. */
export interface WeekPay {
  readonly milliseconds: number;
  readonly minutes: Decimal;
  readonly overtimeMinutes: Decimal;
  readonly straightPay: Decimal;
  readonly premium: Decimal;
  /** Whole milliseconds at their wages and those of overtime: exact, since what is divided twice may miss a half cent. */
  readonly wageMilliseconds: Decimal;
  readonly overtimeMilliseconds: Decimal;
  /** Not rounded. */
  readonly exactStraight: Decimal;
  /** Not rounded. */
  readonly exactPremium: Decimal;
}

export const MS_PER_MINUTE = 60_000;
export const MS_PER_HOUR = 60 * MS_PER_MINUTE;

/**
 * Pay of a person's workweek. Each component is rounded once, half up; rates are never rounded. Time may come entry by
 * entry or summed by day and wage: the pay is the same.
 */
export function weekPay(time: readonly PaidTime[], { currency, thresholds }: PayTerms): WeekPay {
  const milliseconds = time.reduce((sum, piece) => sum + piece.milliseconds, 0);
  const worked = new Decimal(milliseconds);
  const days = thresholds.dailyHours === null ? [worked] : summed(time, (piece) => piece.workday).map(([, sum]) => new Decimal(sum));
  const overtime = overtimeIn(days, thresholds, MS_PER_HOUR);
  // Divided at the end: the sum of whole milliseconds at decimal wages is exact, and so is a half cent of it. Twenty
  // minutes as a third of an hour are not, and their premium at 18.15 would come out a cent short.
  const wages = new Map(time.map(({ hourlyWage }) => [hourlyWage.toString(), hourlyWage]));
  const products = summed(time, (piece) => piece.hourlyWage.toString()).map(([wage, sum]) => (wages.get(wage) ?? worked).times(sum));
  const wageMilliseconds = sumDecimals(products);
  const exactStraight = wageMilliseconds.div(MS_PER_HOUR);
  const exactPremium = overtimePremium(wageMilliseconds, worked, overtime).div(MS_PER_HOUR);
  const [minutes, overtimeMinutes] = [worked.div(MS_PER_MINUTE), overtime.div(MS_PER_MINUTE)];
  return { milliseconds, minutes, overtimeMinutes, wageMilliseconds, overtimeMilliseconds: overtime, straightPay: roundMoney(exactStraight, currency), premium: roundMoney(exactPremium, currency), exactStraight, exactPremium };
}

/** Not rounded. */
export function inMinutes(milliseconds: number): Decimal {
  return new Decimal(milliseconds).div(MS_PER_MINUTE);
}

/** Milliseconds by a key of their pieces, in the order in which the keys come up. */
function summed(time: readonly PaidTime[], key: (piece: PaidTime) => string): [string, number][] {
  const sums = new Map<string, number>();
  for (const piece of time) sums.set(key(piece), piece.milliseconds + (sums.get(key(piece)) ?? 0));
  return [...sums];
}
