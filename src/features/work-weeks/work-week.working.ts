import { Decimal, plain } from '../../domain/decimal.js';
import type { Working, WorkingStep } from '../../domain/working.js';
import { type BurdenAmount, inMinutes, type WorkPiece } from '../../domain/worktime/week/index.js';
import type { PersonWeek } from './person-weeks.js';

const hoursOf = (minutes: Decimal): string => plain(minutes.div(60));

export function workedWorking({ pieces, labor }: PersonWeek): Working {
  const days = minutesBy(pieces, (piece) => piece.workday);
  return {
    rule: 'All time of the week less breaks that are not paid; rests under 20 minutes are work (29 CFR 785.18), as is travel between sites (785.38).',
    inputs: [...days].map(([day, minutes]) => ({ name: day, value: plain(minutes), unit: 'min' })),
    steps: [{ label: 'hours worked', expression: `(${[...days.values()].map(plain).join(' + ')}) / 60`, value: hoursOf(labor.minutes), unit: 'h' }],
  };
}

export function overtimeWorking({ labor, thresholds: { weeklyHours, dailyHours } }: PersonWeek): Working {
  return {
    rule: 'The larger of what is over the week\'s threshold and, where there is one, what is over the days\' (29 CFR 778.102); each week on its own (778.104).',
    inputs: [
      { name: 'hours worked', value: hoursOf(labor.minutes), unit: 'h' },
      ...(weeklyHours === null ? [] : [{ name: 'weekly threshold', value: plain(weeklyHours), unit: 'h' }]),
      ...(dailyHours === null ? [] : [{ name: 'daily threshold', value: plain(dailyHours), unit: 'h' }]),
    ],
    steps: [{ label: 'overtime', expression: dailyHours === null ? 'max(0, hours worked − weekly threshold)' : 'max(hours worked − weekly threshold, sum over days of max(0, hours of the day − daily threshold))', value: hoursOf(labor.overtimeMinutes), unit: 'h' }],
  };
}

export function straightWorking({ pieces, labor }: PersonWeek, currency: string): Working {
  const wages = minutesBy(pieces, (piece) => plain(piece.hourlyWage));
  const steps: WorkingStep[] = [...wages].map(([wage, minutes]) => ({ label: `hours at ${wage}`, expression: `${plain(minutes)} × ${wage} / 60`, value: plain(minutes.times(wage).div(60)), unit: currency }));
  return {
    rule: 'Hours × the wage when they were entered, summed exactly and rounded half up once.',
    inputs: [...wages.keys()].map((wage) => ({ name: 'wage', value: wage, unit: `${currency}/h` })),
    steps: [...steps, { label: 'straight pay', expression: `round(${steps.map((step) => step.value).join(' + ')})`, value: plain(labor.straightPay), unit: currency }],
  };
}

export function premiumWorking({ labor }: PersonWeek, currency: string): Working {
  const [rate, overtime] = [plain(labor.regularRate ?? new Decimal(0)), hoursOf(labor.overtimeMinutes)];
  return {
    rule: 'Half the regular rate for each hour of overtime, since straight time is paid for all hours (29 CFR 778.110, 778.115); the rate is not rounded, the premium once, half up.',
    inputs: [
      { name: 'regular rate', value: rate, unit: `${currency}/h` },
      { name: 'overtime', value: overtime, unit: 'h' },
    ],
    steps: [{ label: 'premium', expression: `round(${rate} × ${overtime} / 2)`, value: plain(labor.premium), unit: currency }],
  };
}

export function burdenWorking({ labor, rates, before, pieces }: PersonWeek, { component, amount, exactWithPay }: BurdenAmount, currency: string): Working {
  const allPay = labor.straightPay.plus(labor.premium);
  if (component === null) {
    const percents = [...new Set(pieces.map((piece) => plain(piece.burdenPercent)))];
    return {
      rule: 'The person\'s own percentage when the hours were entered, on their pay; pay and burden are rounded together, half up.',
      inputs: [{ name: 'pay', value: plain(allPay), unit: currency }, ...percents.map((value) => ({ name: 'burden', value, unit: '%' }))],
      steps: [{ label: 'burden', expression: `round(${plain(exactWithPay ?? allPay)}) − ${plain(allPay)}`, value: plain(amount), unit: currency }],
    };
  }
  const rate = rates.find(({ code }) => code === component.code);
  const [wages, earned] = component.base === 'straight-pay' ? [labor.straightPay, before.straightPay] : [allPay, before.allPay];
  const cap = component.yearlyWageCap;
  const due = cap === null ? plain(wages) : `min(${plain(wages)}, max(0, ${plain(cap)} − ${plain(earned)}))`;
  return {
    rule: 'Percent of the wages of the week, up to what is left of the yearly cap; rounded half up.',
    inputs: [
      { name: component.base === 'straight-pay' ? 'straight pay' : 'all pay', value: plain(wages), unit: currency },
      { name: 'rate', value: plain(component.percent), unit: '%', ...(rate === undefined ? {} : { source: `${rate.name}, from ${rate.effectiveFrom}` }) },
      ...(cap === null ? [] : [{ name: 'yearly cap', value: plain(cap), unit: currency }, { name: 'earned in the year before', value: plain(earned), unit: currency }]),
    ],
    steps: [{ label: component.code, expression: `round(${due} × ${plain(component.percent)} / 100)`, value: plain(amount), unit: currency }],
  };
}

/** Minutes by a key of their pieces, in the order in which the keys come up. */
function minutesBy(pieces: readonly WorkPiece[], key: (piece: WorkPiece) => string): Map<string, Decimal> {
  const sums = new Map<string, number>();
  for (const piece of pieces) sums.set(key(piece), piece.milliseconds + (sums.get(key(piece)) ?? 0));
  return new Map([...sums].map(([name, milliseconds]) => [name, inMinutes(milliseconds)]));
}
