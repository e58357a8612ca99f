import { Decimal, sumDecimals } from '../../decimal.js';
import { roundMoney } from '../../money/index.js';
import { type BurdenComponent, burdenOn } from './burden.js';
import { regularRate } from './overtime.js';
import { MS_PER_HOUR, type PaidTime, type PayTerms, type WeekPay, weekPay } from './week-pay.js';
import type { EarnedBefore } from './year-to-date.js';

/** Work of one person within one workday, of one entry or of several alike. */
export interface WorkPiece extends PaidTime {
  readonly jobId: string;
  readonly costCode: string;
  /** Percent on the wage, in force where the company has no burden components. */
  readonly burdenPercent: Decimal;
}

export interface WeekTerms extends PayTerms {
  /** Those in force; none for the flat percentage that each piece carries. */
  readonly burden: readonly BurdenComponent[];
  readonly before: EarnedBefore;
}

export interface BurdenAmount {
  /** Null for the flat percentage. */
  readonly component: BurdenComponent | null;
  readonly amount: Decimal;
  /** Of the flat percentage: pay and burden together, not rounded; null beside a component. */
  readonly exactWithPay: Decimal | null;
}

/** The labor of one person in one workweek. Amounts are whole minor units unless told otherwise. */
export interface WeekLabor extends WeekPay {
  /** Not rounded; null in a week without a worked minute. */
  readonly regularRate: Decimal | null;
  readonly burden: readonly BurdenAmount[];
  readonly total: Decimal;
  /** What the total is handed out by: each piece's part of it, in proportion. */
  readonly weights: readonly Decimal[];
}

/**
 * A rate of so many decimals times the milliseconds of a week has no more digits than a sum keeps: weights add up to the
 * same number in any order and by any groups, so that a tie between two jobs is one whichever way hours were summed.
 */
const RATE_DECIMALS = 18;

/** Wide enough for products of a week's wages, percentages and time three times over. */
const Wide = Decimal.clone({ precision: 120 });

/**
 * Pay and burden of a person's workweek. The premium belongs to the week and not to the hours that came last, so every
 * minute of it carries the same part.
 */
export function weekLabor(pieces: readonly WorkPiece[], terms: WeekTerms): WeekLabor {
  const pay = weekPay(pieces, terms);
  const burden = terms.burden.length > 0 ? componentsOn(terms, pay) : [flatBurden(pieces, pay, terms.currency)];
  const rateOf = rates(pay, burden);
  return {
    ...pay,
    regularRate: pay.milliseconds === 0 ? null : regularRate(pay.wageMilliseconds, new Decimal(pay.milliseconds)),
    burden,
    total: sumDecimals([pay.straightPay, pay.premium, ...burden.map(({ amount }) => amount)]),
    weights: pieces.map((piece) => rateOf(piece).times(piece.milliseconds)),
  };
}

/** What time costs, by its wage and percentage. */
function rates(pay: WeekPay, burden: readonly BurdenAmount[]): (piece: WorkPiece) => Decimal {
  const premium = partOf(pay.exactPremium.times(MS_PER_HOUR), pay.milliseconds);
  const sumOn = (base: BurdenComponent['base']): Decimal => sumDecimals(burden.filter(({ component }) => component?.base === base).map(({ amount }) => amount));
  const onAllPay = partOf(sumOn('all-pay'), pay.exactStraight.plus(pay.exactPremium)).plus(1);
  const onStraight = partOf(sumOn('straight-pay'), pay.exactStraight);
  const isFlat = burden.some(({ component }) => component === null);
  const known = new Map<string, Decimal>();
  return ({ hourlyWage, burdenPercent }) => {
    const key = isFlat ? `${hourlyWage.toString()} ${burdenPercent.toString()}` : hourlyWage.toString();
    const there = known.get(key);
    if (there !== undefined) return there;
    const paid = hourlyWage.plus(premium);
    const rate = isFlat ? paid.times(burdenPercent.plus(100)).div(100) : paid.times(onAllPay).plus(hourlyWage.times(onStraight));
    const kept = rate.toDecimalPlaces(RATE_DECIMALS);
    known.set(key, kept);
    return kept;
  };
}

function componentsOn({ burden, before, currency }: WeekTerms, { straightPay, premium }: WeekPay): BurdenAmount[] {
  return burden.map((component) => ({
    component,
    amount: component.base === 'straight-pay' ? burdenOn(component, straightPay, before.straightPay, currency) : burdenOn(component, straightPay.plus(premium), before.allPay, currency),
    exactWithPay: null,
  }));
}

/** An estimate rather than a tax return: pay and burden are rounded together, so short weeks do not lose a cent to both. */
function flatBurden(pieces: readonly WorkPiece[], { milliseconds, straightPay, premium, wageMilliseconds, overtimeMilliseconds }: WeekPay, currency: string): BurdenAmount {
  // Straight pay and premium over one denominator, 2 × the week's time squared, for the sake of a half cent.
  const twice = new Wide(2 * milliseconds).times(milliseconds);
  const premiumOn = new Wide(wageMilliseconds).times(overtimeMilliseconds);
  const parts = pieces.map((piece) => twice.times(piece.hourlyWage).plus(premiumOn).times(piece.burdenPercent.plus(100)).times(piece.milliseconds));
  const exact = partOf(parts.reduce((sum, part) => sum.plus(part), new Wide(0)), twice.times(100 * MS_PER_HOUR));
  // Straight pay and premium are rounded apart, so their sum may be the larger by a cent where there is no burden.
  return { component: null, amount: Decimal.max(0, roundMoney(exact, currency).minus(straightPay).minus(premium)), exactWithPay: exact };
}

function partOf(amount: Decimal, whole: Decimal | number): Decimal {
  const divisor = new Decimal(whole);
  return divisor.isZero() ? divisor : amount.div(divisor);
}
