// US Code of Federal Regulations, title 29, part 778 (overtime compensation). The texts of 1981 and 2011 as named.
// V: read there. C: computed here from the rule, no figure of the publisher's. M: from memory.
// The text of 778.115 was read only as another page quotes it (V2), so its rows are C.
import { decimal, sumDecimals } from '../../src/domain/decimal.js';
import { overtimeIn, overtimePremium, regularRate } from '../../src/domain/worktime/week/index.js';

const FEDERAL = { weeklyHours: decimal(40), dailyHours: null };

/** Straight pay and premium of a week, each rounded once. */
function weekly(remuneration: string, hours: number): string {
  const overtime = overtimeIn([decimal(hours * 60)], FEDERAL, 60).div(60);
  const premium = overtimePremium(decimal(remuneration), decimal(hours), overtime);
  return sumDecimals([decimal(remuneration), premium.toDecimalPlaces(2)]).toFixed(2);
}

test.each([
  ['V: 778.110(a), 2011: 46 hours at $12', '552', 46, '12', '588.00'],
  ['V: 778.110(b), 2011: the same with a bonus of $46', '598', 46, '13', '637.00'],
  ['V: 778.110(a), 1981: 46 hours at $6', '276', 46, '6', '294.00'],
  ['V: 778.110(b), 1981: the same with a bonus of $9.20', '285.20', 46, '6.2', '303.80'],
  ['V for the rate, C for the total: 778.111(a), 1981: $245.50 by the piece and 4 hours at $5, 50 hours', '265.50', 50, '5.31', '292.05'],
  ['C: 778.118: 46 hours at $10 and a commission of $92', '552', 46, '12', '588.00'],
  ['C: 778.115: 30 hours at $18 and 20 at $24', '1020', 50, '20.4', '1122.00'],
])('%s', (_case, remuneration, hours, rate, total) => {
  expect(regularRate(decimal(remuneration), decimal(hours)).toFixed()).toBe(rate);
  expect(weekly(remuneration, hours)).toBe(total);
});

test('C: 778.115: 27 hours at $22.50 and 19 at $31.25 are $1,279.59, and a cent less with the rate rounded first', () => {
  expect(regularRate(decimal('1201.25'), decimal(46)).toFixed(6)).toBe('26.114130');
  expect(overtimePremium(decimal('1201.25'), decimal(46), decimal(6)).toFixed(6)).toBe('78.342391');
  expect(weekly('1201.25', 46)).toBe('1279.59');
  expect(decimal('26.11').times('0.5').times(6).toFixed(2)).toBe('78.33');
});

test.each([
  ['V: 778.113(a), 1981: $182.70 for 35 hours', '182.70', 35, '5.22', '7.83'],
  ['V: 778.113(a), 1981: $220.80 for 40 hours', '220.80', 40, '5.52', '8.28'],
  ['M: 778.113(a): $350 for 35 hours', '350', 35, '10.00', '15.00'],
  ['M: 778.113(a): $375 for 40 hours', '375', 40, '9.38', '14.06'],
])('%s: the rate, and one and a half of it', (_case, salary, hours, rate, overtimeRate) => {
  const regular = regularRate(decimal(salary), decimal(hours));
  expect([regular.toFixed(2), regular.times('1.5').toFixed(2)]).toEqual([rate, overtimeRate]);
});

test.each([
  ['V for the salary, C for the rate: 778.113(b), 1981: $1,040 a month', 1040, 12, '240.00', '6.00'],
  ['C: 778.113(b), 1981: $520 a half month', 520, 24, '240.00', '6.00'],
  ['M: 778.113(b): $1,560 a month', 1560, 12, '360.00', '9.00'],
])('%s: times its number in the year, by 52 weeks of 40 hours', (_case, salary, times, aWeek, rate) => {
  const week = decimal(salary).times(times).div(52);
  expect([week.toFixed(2), regularRate(week, decimal(40)).toFixed(2)]).toEqual([aWeek, rate]);
});

test('C: 778.120(a): a monthly commission of $416 adds $8.00 to a week of 48 hours', () => {
  expect(overtimePremium(decimal(416).times(12).div(52), decimal(48), decimal(8)).toFixed(2)).toBe('8.00');
});

test('V: 778.104: 30 hours and then 50 are 10 hours of overtime in the second week, not none over both', () => {
  expect([30, 50].map((hours) => overtimeIn([decimal(hours * 60)], FEDERAL, 60).div(60).toNumber())).toEqual([0, 10]);
});

test('V: 778.102: ten hours a day on four days are no overtime', () => {
  expect(overtimeIn(Array(4).fill(decimal(600)), FEDERAL, 60).toNumber()).toBe(0);
});
