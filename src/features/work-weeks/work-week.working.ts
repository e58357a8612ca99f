import { Decimal, plain, sumDecimals } from '../../domain/decimal.js';
import type { Working, WorkingStep } from '../../domain/working.js';
import { type BurdenAmount, inMinutes, type WorkPiece } from '../../domain/worktime/week/index.js';
import type { PersonWeek } from './person-weeks.js';

/** A third of an hour has no end; so many decimals change no cent, and somebody still reads them. */
const DECIMALS = 12;

const written = (value: Decimal): string => plain(value.toDecimalPlaces(DECIMALS));
const hoursOf = (minutes: Decimal): string => written(minutes.div(60));

export function workedWorking({ pieces, labor }: PersonWeek): Working {
  const days = minutesBy(pieces, (piece) => piece.workday);
  return {
    rule: 'All time of the week less breaks that are not paid; rests under 20 minutes are work (29 CFR 785.18), as is travel between sites (785.38).',
    inputs: [...days].map(([day, minutes]) => ({ name: day, value: written(minutes), unit: 'min' })),
    steps: [{ label: 'hours worked', expression: `(${[...days.values()].map(written).join(' + ')}) / 60`, value: hoursOf(labor.minutes), unit: 'h' }],
  };
}

export function overtimeWorking({ pieces, labor, thresholds: { weeklyHours, dailyHours } }: PersonWeek): Working {
  const over = (minutes: Decimal, hours: Decimal): Decimal => Decimal.max(0, minutes.minus(hours.times(60)));
  const steps: WorkingStep[] = [];
  if (weeklyHours !== null) steps.push({ label: 'over the week\'s threshold', expression: `max(0, ${hoursOf(labor.minutes)} − ${plain(weeklyHours)})`, value: hoursOf(over(labor.minutes, weeklyHours)), unit: 'h' });
  if (dailyHours !== null) {
    const days = [...minutesBy(pieces, (piece) => piece.workday).values()];
    steps.push({
      label: 'over the days\' threshold', expression: days.map((minutes) => `max(0, ${hoursOf(minutes)} − ${plain(dailyHours)})`).join(' + '),
      value: hoursOf(sumDecimals(days.map((minutes) => over(minutes, dailyHours)))), unit: 'h',
    });
  }
  return {
    rule: 'The larger of what is over the week\'s threshold and, where there is one, what is over the days\' (29 CFR 778.102); each week on its own (778.104).',
    inputs: [
      { name: 'hours worked', value: hoursOf(labor.minutes), unit: 'h' },
      ...(weeklyHours === null ? [] : [{ name: 'weekly threshold', value: plain(weeklyHours), unit: 'h' }]),
      ...(dailyHours === null ? [] : [{ name: 'daily threshold', value: plain(dailyHours), unit: 'h' }]),
    ],
    steps: [...steps, { label: 'overtime', expression: `max(${['0', ...steps.map((step) => step.value)].join(', ')})`, value: hoursOf(labor.overtimeMinutes), unit: 'h' }],
  };
}

export function straightWorking({ pieces, labor }: PersonWeek, currency: string): Working {
  const wages = minutesBy(pieces, (piece) => plain(piece.hourlyWage));
  const steps: WorkingStep[] = [...wages].map(([wage, minutes]) => ({ label: `hours at ${wage}`, expression: `${written(minutes)} × ${wage} / 60`, value: written(minutes.times(wage).div(60)), unit: currency }));
  return {
    rule: 'Hours × the wage when they were entered, summed exactly and rounded half up once.',
    inputs: [...wages.keys()].map((wage) => ({ name: 'wage', value: wage, unit: `${currency}/h` })),
    steps: [...steps, { label: 'straight pay', expression: `round(${steps.map((step) => step.value).join(' + ')})`, value: plain(labor.straightPay), unit: currency }],
  };
}

export function premiumWorking({ labor }: PersonWeek, currency: string): Working {
  // In minutes, which end where hours do not: of thirds somebody would get a half cent less than the amount.
  const [rate, overtime] = [written(labor.regularRate ?? new Decimal(0)), written(labor.overtimeMinutes)];
  const [straight, worked] = [written(labor.exactStraight), written(labor.minutes)];
  return {
    rule: 'Half the regular rate for each hour of overtime, since straight time is paid for all hours (29 CFR 778.110, 778.115); the rate is not rounded, the premium once, half up.',
    inputs: [
      { name: 'straight pay, not rounded', value: straight, unit: currency },
      { name: 'time worked', value: worked, unit: 'min' },
      { name: 'overtime', value: overtime, unit: 'min' },
    ],
    steps: [...(labor.regularRate === null ? [] : [{ label: 'regular rate', expression: `${straight} × 60 / ${worked}`, value: rate, unit: `${currency}/h` }]), { label: 'premium', expression: `round(${rate} × ${overtime} / 60 / 2)`, value: plain(labor.premium), unit: currency }],
  };
}

export function burdenWorking({ labor, rates, before, pieces }: PersonWeek, { component, amount, exactWithPay }: BurdenAmount, currency: string): Working {
  const allPay = labor.straightPay.plus(labor.premium);
  if (component === null) {
    const percents = [...minutesBy(pieces, (piece) => plain(piece.burdenPercent)).keys()];
    const steps = percents.map((percent) => flatStep(labor, pieces.filter((piece) => plain(piece.burdenPercent) === percent), percent, currency));
    return {
      rule: 'The person\'s own percentage when the hours were entered, on their pay; pay and burden are rounded together, half up.',
      inputs: [{ name: 'pay', value: plain(allPay), unit: currency }, ...percents.map((value) => ({ name: 'burden', value, unit: '%' }))],
      steps: [...steps, { label: 'burden', expression: `max(0, round(${written(exactWithPay ?? allPay)}) − ${plain(allPay)})`, value: plain(amount), unit: currency }],
    };
  }
  const rate = rates.find(({ code }) => code === component.code);
  const [wages, earned] = component.base === 'straight-pay' ? [labor.straightPay, before.straightPay] : [allPay, before.allPay];
  const cap = component.yearlyWageCap;
  const due = cap === null ? plain(wages) : `min(${plain(wages)}, max(0, ${plain(cap)} − ${plain(earned)}))`;
  return {
    rule: cap === null ? 'Percent of the wages of the week; rounded half up.' : 'Percent of the wages of the week, up to what is left of the yearly cap; rounded half up.',
    inputs: [
      { name: component.base === 'straight-pay' ? 'straight pay' : 'all pay', value: plain(wages), unit: currency },
      { name: 'rate', value: plain(component.percent), unit: '%', ...(rate === undefined ? {} : { source: `${rate.name}, from ${rate.effectiveFrom}` }) },
      ...(cap === null ? [] : [{ name: 'yearly cap', value: plain(cap), unit: currency }, { name: 'earned earlier in the year', value: plain(earned), unit: currency, source: 'the year\'s weeks before this one, and opening wages' }]),
    ],
    steps: [{ label: component.code, expression: `round(${due} × ${plain(component.percent)} / 100)`, value: plain(amount), unit: currency }],
  };
}

/** Wages and premium of the hours that carry one percentage, with what is paid on top. */
function flatStep(labor: PersonWeek['labor'], pieces: readonly WorkPiece[], percent: string, currency: string): WorkingStep {
  const straight = sumDecimals(pieces.map((piece) => piece.hourlyWage.times(inMinutes(piece.milliseconds)).div(60)));
  const milliseconds = pieces.reduce((sum, piece) => sum + piece.milliseconds, 0);
  const premium = labor.milliseconds === 0 ? new Decimal(0) : labor.exactPremium.times(milliseconds).div(labor.milliseconds);
  const factor = new Decimal(percent).plus(100);
  return { label: `pay and burden at ${percent} %`, expression: `(${written(straight)} + ${written(premium)}) × ${plain(factor)} / 100`, value: written(straight.plus(premium).times(factor).div(100)), unit: currency };
}

/** Minutes by a key of their pieces, in the order in which the keys come up. */
function minutesBy(pieces: readonly WorkPiece[], key: (piece: WorkPiece) => string): Map<string, Decimal> {
  const sums = new Map<string, number>();
  for (const piece of pieces) sums.set(key(piece), piece.milliseconds + (sums.get(key(piece)) ?? 0));
  return new Map([...sums].map(([name, milliseconds]) => [name, inMinutes(milliseconds)]));
}
