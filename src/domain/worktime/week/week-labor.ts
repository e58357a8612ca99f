import { Decimal, sumDecimals } from '../../decimal.js';
import { roundMoney } from '../../money/index.js';
import { type BurdenComponent, burdenOn } from './burden.js';
import { type OvertimeThresholds, overtimeMinutes, overtimePremium, regularRate } from './overtime.js';

/** Work of one person within one workday, on one entry. */
export interface WorkPiece {
  readonly entryId: string;
  readonly jobId: string;
  readonly costCode: string;
  /** Which workday; any text that is the same for all pieces of one. */
  readonly workday: string;
  /** Minutes that count as worked, unrounded. */
  readonly minutes: Decimal;
  readonly hourlyWage: Decimal;
  /** Percent on the wage, in force where the company has no burden components. */
  readonly burdenPercent: Decimal;
}

/** What a person had earned in the calendar year before the week: where a yearly cap stands. */
export interface EarnedBefore {
  readonly allPay: Decimal;
  readonly straightPay: Decimal;
}

export interface WeekTerms {
  readonly currency: string;
  readonly thresholds: OvertimeThresholds;
  /** Those in force; none for the flat percentage that each piece carries. */
  readonly burden: readonly BurdenComponent[];
  readonly before: EarnedBefore;
}

export interface BurdenAmount {
  /** Null for the flat percentage. */
  readonly component: BurdenComponent | null;
  readonly amount: Decimal;
}

/** The labor of one person in one workweek. Amounts are whole minor units unless told otherwise. */
export interface WeekLabor {
  readonly minutes: Decimal;
  readonly overtimeMinutes: Decimal;
  readonly straightPay: Decimal;
  /** Not rounded; null in a week without a worked minute. */
  readonly regularRate: Decimal | null;
  readonly premium: Decimal;
  readonly burden: readonly BurdenAmount[];
  readonly total: Decimal;
  /** Each piece's exact part of the total, not rounded: what the total is handed out by. */
  readonly weights: readonly Decimal[];
}

/** What is paid for a workweek. Amounts in whole minor units unless told otherwise. */
export interface WeekPay {
  readonly minutes: Decimal;
  readonly overtimeMinutes: Decimal;
  readonly straightPay: Decimal;
  readonly premium: Decimal;
  /** Not rounded. */
  readonly exactStraight: Decimal;
  /** Not rounded. */
  readonly exactPremium: Decimal;
}

/** Pay of a person's workweek. Each component is rounded once, half up; rates are never rounded. */
export function weekPay(pieces: readonly WorkPiece[], { currency, thresholds }: Pick<WeekTerms, 'currency' | 'thresholds'>): WeekPay {
  const minutes = sumDecimals(pieces.map((piece) => piece.minutes));
  const overtime = overtimeMinutes(summed(pieces, (piece) => piece.workday).map(([, sum]) => sum), thresholds);
  // By wage first: most weeks have one, and the sum is the same.
  const exactStraight = sumDecimals(summed(pieces, (piece) => piece.hourlyWage.toString()).map(([wage, sum]) => sum.times(wage))).div(60);
  const exactPremium = overtimePremium(exactStraight, minutes.div(60), overtime.div(60));
  return { minutes, overtimeMinutes: overtime, straightPay: roundMoney(exactStraight, currency), premium: roundMoney(exactPremium, currency), exactStraight, exactPremium };
}

/**
 * Pay and burden of a person's workweek. The premium belongs to the week and not to the hours that came last, so every
 * minute of it carries the same part.
 */
export function weekLabor(pieces: readonly WorkPiece[], { currency, thresholds, burden, before }: WeekTerms): WeekLabor {
  const { minutes, overtimeMinutes: overtime, straightPay, premium, exactStraight, exactPremium } = weekPay(pieces, { currency, thresholds });
  const straight = pieces.map((piece) => new Decimal(piece.minutes).times(piece.hourlyWage).div(60));
  const premiumAMinute = partOf(exactPremium, new Decimal(1), minutes);
  const pay = straight.map((wage, index) => wage.plus(premiumAMinute.times(pieces[index]?.minutes ?? 0)));
  const allPay = straightPay.plus(premium);
  const exactPay = exactStraight.plus(exactPremium);
  const amounts = burden.length > 0 ? componentsOn(burden, straightPay, allPay, before, currency) : [flatBurden(pieces, pay, allPay, currency)];
  const weights = pieces.map((piece, index) => {
    const [wage, paid] = [straight[index] ?? minutes, pay[index] ?? minutes];
    if (burden.length === 0) return paid.times(piece.burdenPercent.plus(100)).div(100);
    const shares = amounts.map(({ component, amount }) => (component?.base === 'straight-pay' ? partOf(amount, wage, exactStraight) : partOf(amount, paid, exactPay)));
    return paid.plus(sumDecimals(shares));
  });
  return {
    minutes,
    overtimeMinutes: overtime,
    straightPay,
    regularRate: minutes.isZero() ? null : regularRate(exactStraight, minutes.div(60)),
    premium,
    burden: amounts,
    total: allPay.plus(sumDecimals(amounts.map(({ amount }) => amount))),
    weights,
  };
}

/** Minutes by a key of their pieces, in the order in which the keys come up. */
function summed(pieces: readonly WorkPiece[], key: (piece: WorkPiece) => string): [string, Decimal][] {
  const sums = new Map<string, Decimal>();
  for (const piece of pieces) {
    const before = sums.get(key(piece));
    sums.set(key(piece), before === undefined ? piece.minutes : before.plus(piece.minutes));
  }
  return [...sums];
}

function componentsOn(burden: readonly BurdenComponent[], straightPay: Decimal, allPay: Decimal, before: EarnedBefore, currency: string): BurdenAmount[] {
  return burden.map((component) => ({
    component,
    amount: component.base === 'straight-pay' ? burdenOn(component, straightPay, before.straightPay, currency) : burdenOn(component, allPay, before.allPay, currency),
  }));
}

/** An estimate rather than a tax return: pay and burden are rounded together, so short weeks do not lose a cent to both. */
function flatBurden(pieces: readonly WorkPiece[], pay: readonly Decimal[], allPay: Decimal, currency: string): BurdenAmount {
  const exact = sumDecimals(pay.map((paid, index) => paid.times((pieces[index]?.burdenPercent ?? new Decimal(0)).plus(100)).div(100)));
  // Straight pay and premium are rounded apart, so their sum may be the larger by a cent where there is no burden.
  return { component: null, amount: Decimal.max(0, roundMoney(exact, currency).minus(allPay)) };
}

function partOf(amount: Decimal, part: Decimal, whole: Decimal): Decimal {
  return whole.isZero() ? new Decimal(0) : amount.times(part).div(whole);
}
