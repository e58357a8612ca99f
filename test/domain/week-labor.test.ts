import fc from 'fast-check';
import { decimal, type Decimal, sumDecimals } from '../../src/domain/decimal.js';
import { cutWork, overtimeIn, shareOut, weekLabor, type WorkPiece } from '../../src/domain/worktime/week/index.js';
import { refusals } from './support.js';

const hour = 3_600_000;
const NOTHING = { allPay: decimal(0), straightPay: decimal(0) };
const terms = { currency: 'USD', thresholds: { weeklyHours: decimal(40), dailyHours: null }, burden: [], before: NOTHING };
const piece = (changes: Partial<WorkPiece>): WorkPiece => ({
  jobId: 'a', costCode: 'edge', workday: '1', milliseconds: hour, hourlyWage: decimal(20), burdenPercent: decimal(0), ...changes,
});
const total = (list: readonly Decimal[]): string => sumDecimals(list).toFixed();

const anyPiece = fc.record({
  jobId: fc.constantFrom('a', 'b', 'c'),
  costCode: fc.constantFrom('edge', 'cleanout', 'travel'),
  workday: fc.constantFrom('1', '2', '3', '4', '5', '6', '7'),
  milliseconds: fc.oneof(fc.constantFrom(hour, 8 * hour), fc.integer({ min: 0, max: 15 * hour })),
  hourlyWage: fc.oneof(fc.constantFrom('20', '23.1701').map(decimal), fc.integer({ min: 0, max: 900_000 }).map((n) => decimal(n).div(10_000))),
  burdenPercent: fc.oneof(fc.constant(decimal('22.5')), fc.integer({ min: 0, max: 600_000 }).map((n) => decimal(n).div(10_000))),
});
const anyWeek = fc.array(anyPiece, { minLength: 1, maxLength: 40 });
const components = (['all-pay', 'straight-pay'] as const).map((base, n) => ({ code: `c${n}`, percent: decimal('6.2'), yearlyWageCap: decimal(900 * (n + 1)), base }));
const levels = [(work: WorkPiece) => work.jobId, (work: WorkPiece) => work.costCode];

test('hands the payroll of a week out to its jobs, codes and entries to the cent', () => {
  fc.assert(
    fc.property(anyWeek, fc.constantFrom([], components), fc.constantFrom(null, decimal(8)), (pieces, burden, dailyHours) => {
      const week = weekLabor(pieces, { ...terms, burden, thresholds: { weeklyHours: decimal(40), dailyHours } });
      const shares = shareOut(week.total, pieces, week.weights, levels, 'USD');
      expect(total(shares)).toBe(week.total.toFixed());
      expect(total([week.straightPay, week.premium, ...week.burden.map(({ amount }) => amount)])).toBe(week.total.toFixed());
      for (const job of ['a', 'b', 'c']) {
        const mine = pieces.flatMap((work, index) => (work.jobId === job ? [index] : []));
        const exact = sumDecimals(mine.map((index) => week.weights[index] ?? decimal(0))).times(week.total).div(orOne(sumDecimals(week.weights)));
        expect(sumDecimals(mine.map((index) => shares[index] ?? decimal(0))).minus(exact).abs().lt('0.01')).toBe(true);
      }
    }),
  );
});

/** So that a week of no pay is divided by something. */
function orOne(sum: Decimal): Decimal {
  return sum.isZero() ? decimal(1) : sum;
}

test('gives jobs the same cents from single entries as from sums of them by day, wage, job and code', () => {
  fc.assert(
    fc.property(anyWeek, fc.constantFrom([], components), fc.constantFrom(null, decimal(8)), (pieces, burden, dailyHours) => {
      const sums = new Map<string, WorkPiece>();
      for (const work of pieces) {
        const key = [work.workday, work.hourlyWage, work.jobId, work.costCode, work.burdenPercent].join(' ');
        sums.set(key, { ...work, milliseconds: work.milliseconds + (sums.get(key)?.milliseconds ?? 0) });
      }
      const of = (list: readonly WorkPiece[]): string[] => {
        const week = weekLabor(list, { ...terms, burden, thresholds: { weeklyHours: decimal(40), dailyHours } });
        const shares = shareOut(week.total, list, week.weights, levels, 'USD');
        return ['a', 'b', 'c'].flatMap((job) => ['edge', 'cleanout', 'travel'].map((code) => total(list.flatMap((work, index) => (work.jobId === job && work.costCode === code ? [shares[index] ?? decimal(NaN)] : [])))));
      };
      expect(of([...sums.values()])).toEqual(of(pieces));
    }),
  );
});

test('pays a week alike in whatever order its entries come', () => {
  fc.assert(
    fc.property(anyWeek, (pieces) => {
      const [forth, back] = [weekLabor(pieces, terms), weekLabor([...pieces].reverse(), terms)];
      expect([forth.total.toFixed(), forth.premium.toFixed()]).toEqual([back.total.toFixed(), back.premium.toFixed()]);
    }),
  );
});

test('lets every minute of the week carry the same premium, whichever job came last', () => {
  const pieces = [piece({ jobId: 'a', milliseconds: 25 * hour }), piece({ jobId: 'b', milliseconds: 25 * hour })];
  const week = weekLabor(pieces, terms);
  expect([week.premium.toFixed(), week.total.toFixed()]).toEqual(['100', '1100']);
  expect(shareOut(week.total, pieces, week.weights, levels, 'USD').map((share) => share.toFixed())).toEqual(['550', '550']);
});

test('takes the flat percentage of each entry on its pay, the premium included', () => {
  const week = weekLabor([piece({ milliseconds: 50 * hour, burdenPercent: decimal('22.5') })], terms);
  expect([week.straightPay, week.premium, week.burden[0]?.amount, week.total].map((amount) => amount?.toFixed())).toEqual(['1000', '100', '247.5', '1347.5']);
});

test('leaves the premium out of a component on straight pay, and stops each at its own cap', () => {
  const week = weekLabor([piece({ milliseconds: 50 * hour, burdenPercent: decimal(99) })], { ...terms, burden: components, before: { allPay: decimal(850), straightPay: decimal(1_000) } });
  // 50 left of 900 on all pay, 800 left of 1,800 on straight pay of 1,000.
  expect(week.burden.map(({ amount }) => amount.toFixed())).toEqual(['3.1', '49.6']);
});

test('knows no rate for a week that was all break', () => {
  const week = weekLabor([piece({ milliseconds: 0 })], terms);
  expect([week.regularRate, week.total.toFixed()]).toEqual([null, '0']);
});

test('counts a minute over the day and over the week once', () => {
  const days = Array(5).fill(decimal(10 * 60)) as Decimal[];
  const overtime = (weeklyHours: number | null, dailyHours: number | null) =>
    overtimeIn(days, { weeklyHours: weeklyHours === null ? null : decimal(weeklyHours), dailyHours: dailyHours === null ? null : decimal(dailyHours) }, 60).div(60).toNumber();
  expect([overtime(40, 8), overtime(40, 9), overtime(null, 8), overtime(40, null), overtime(null, null)]).toEqual([10, 10, 10, 10, 0]);
});

test('refuses minutes below zero, saying which day', () => {
  expect(refusals(() => overtimeIn([decimal(1), decimal(-1)], terms.thresholds, 60))).toEqual(['/timeByDay/1']);
});

test('cuts a night shift at the hour of the day and its break in proportion', () => {
  const span = { startedAt: new Date(22 * hour), endedAt: new Date(30 * hour), pauses: [], unpaidMinutes: 40 };
  const cut = cutWork(span, [0, 24 * hour, 48 * hour]);
  expect(cut.map(({ place, milliseconds }) => [place, milliseconds / 60_000])).toEqual([[0, 110], [1, 330]]);
});

test('takes a pause from the day that it was in', () => {
  const pauses = [{ startedAt: new Date(25 * hour), endedAt: new Date(26 * hour) }, { startedAt: new Date(23.75 * hour), endedAt: new Date(24.25 * hour) }];
  const cut = cutWork({ startedAt: new Date(22 * hour), endedAt: new Date(30 * hour), pauses, unpaidMinutes: 39 }, [0, 24 * hour, 48 * hour]);
  // 105 and 285 minutes are left of the pauses; a tenth of each goes with the 39 minutes.
  expect(cut.map(({ place, milliseconds }) => [place, milliseconds / 60_000])).toEqual([[0, 94.5], [1, 256.5]]);
});

test('keeps a day of which all was pause', () => {
  const pauses = [{ startedAt: new Date(24 * hour), endedAt: new Date(26 * hour) }];
  const cut = (startedAt: number) => cutWork({ startedAt: new Date(startedAt * hour), endedAt: new Date(26 * hour), pauses, unpaidMinutes: 0 }, [0, 24 * hour, 48 * hour]);
  expect([cut(22), cut(24)].map((days) => days.map(({ place, milliseconds }) => [place, milliseconds / 60_000]))).toEqual([[[0, 120], [1, 0]], [[1, 0]]]);
});

test('loses no minute to a cut, wherever the days begin', () => {
  const starts = fc.uniqueArray(fc.integer({ min: 1, max: 9_999 }), { maxLength: 12 }).map((list) => [0, ...list.sort((a, b) => a - b), 10_000]);
  fc.assert(
    fc.property(starts, fc.integer({ min: 0, max: 4_999 }), fc.integer({ min: 1, max: 5_000 }), fc.double({ min: 0, max: 1, noNaN: true }), (days, from, length, unpaid) => {
      const pieces = cutWork({ startedAt: new Date(from * 1_000), endedAt: new Date((from + length) * 1_000), pauses: [], unpaidMinutes: Math.floor((length / 60) * unpaid) }, days.map((day) => day * 1_000)).map((cut) => cut.milliseconds);
      expect(pieces.reduce((sum, piece) => sum + piece, 0)).toBe(length * 1_000 - Math.floor((length / 60) * unpaid) * 60_000);
      expect(pieces.every((piece) => Number.isInteger(piece) && piece >= 0)).toBe(true);
    }),
  );
});
