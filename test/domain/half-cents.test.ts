import fc from 'fast-check';
import { decimal } from '../../src/domain/decimal.js';
import { laborCost } from '../../src/domain/worktime/index.js';
import { weekLabor } from '../../src/domain/worktime/week/index.js';

const MINUTE = 60_000;
const NOTHING = { allPay: decimal(0), straightPay: decimal(0) };

interface Worked { readonly day: number; readonly minutes: number; readonly cents: number; readonly percent: number }

const week = (work: readonly Worked[], dailyHours: number | null = null) =>
  weekLabor(
    work.map(({ day, minutes, cents, percent }) => ({ jobId: 'a', costCode: 'edge', workday: String(day), milliseconds: minutes * MINUTE, hourlyWage: decimal(cents).div(100), burdenPercent: decimal(percent) })),
    { currency: 'USD', thresholds: { weeklyHours: decimal(40), dailyHours: dailyHours === null ? null : decimal(dailyHours) }, burden: [], before: NOTHING },
  );

/** A fraction of cents, none negative, to the whole cent by integers alone. */
const rounded = (above: bigint, below: bigint): number => Number((2n * above + below) / (2n * below));

/** Premium, and pay with the flat percentage, in cents, over whole numbers from the first to the last. */
function inCents(work: readonly Worked[], dailyHours: number | null): { premium: number; straight: number; all: number } {
  const sum = (of: (one: Worked) => number): bigint => work.reduce((total, one) => total + BigInt(of(one)), 0n);
  const minutes = sum((one) => one.minutes);
  const ofDays = dailyHours === null ? [] : [...new Set(work.map(({ day }) => day))].map((day) => work.filter((one) => one.day === day).reduce((total, one) => total + one.minutes, 0));
  const overDays = BigInt(ofDays.reduce((total, day) => total + Math.max(0, day - (dailyHours ?? 0) * 60), 0));
  const overtime = [0n, minutes - 2_400n, overDays].reduce((most, one) => (one > most ? one : most));
  const pay = sum((one) => one.minutes * one.cents);
  const burdened = sum((one) => one.minutes * one.cents * (100 + one.percent));
  const onPremium = sum((one) => one.minutes * (100 + one.percent));
  return {
    straight: rounded(pay, 60n),
    premium: rounded(pay * overtime, 120n * minutes),
    all: rounded(2n * minutes * minutes * burdened + pay * overtime * onPremium, 2n * minutes * minutes * 6_000n),
  };
}

const anyWork = fc.record({
  day: fc.nat({ max: 6 }),
  minutes: fc.nat({ max: 180 }).map((n) => (n + 1) * 5),
  cents: fc.integer({ min: 50, max: 200 }).map((n) => n * 15),
  percent: fc.constantFrom(0, 20, 50),
});

// C: 778.110 on a third of an hour; 18.15 × 1/3 ÷ 2 = 3.025 and 7.32 × 5/12 ÷ 2 = 1.525, without a remainder.
test.each([[1_815, 20, '3.03'], [732, 25, '1.53'], [900, 11, '0.83']])('pays the half cent of a premium at %i cents an hour on %i minutes of overtime', (cents, minutes, premium) => {
  const days = [1, 2, 3, 4, 5].map((day) => ({ day, minutes: 480 + (day === 5 ? minutes : 0), cents, percent: 0 }));
  expect([week(days).premium.toFixed(2), week(days, 8).premium.toFixed(2)]).toEqual([premium, premium]);
});

// 20 s at 0.90 an hour.
test('keeps the half cent of a single entry whose seconds are a third of a minute', () => {
  expect(laborCost(decimal(20).div(60), decimal('0.90'), decimal(0)).toFixed()).toBe('0.005');
});

test('rounds premium and burden as whole numbers do, however the hours divide', () => {
  fc.assert(
    fc.property(fc.array(anyWork, { minLength: 1, maxLength: 12 }), fc.constantFrom(null, 8), (work, dailyHours) => {
      const { straight, premium, all } = inCents(work, dailyHours);
      const found = week(work, dailyHours);
      expect([found.straightPay, found.premium, found.total].map((amount) => amount.times(100).toNumber())).toEqual([straight, premium, Math.max(all, straight + premium)]);
    }),
    { numRuns: 2_000 },
  );
});
