import fc from 'fast-check';
import { decimal, sumDecimals } from '../../src/domain/decimal.js';
import { burdenOn, type PaidTime, weekPay, yearToDate } from '../../src/domain/worktime/week/index.js';

const hour = 3_600_000;
const terms = { currency: 'USD', thresholds: { weeklyHours: decimal(40), dailyHours: null } };
const time = (workday: string, hours: number, wage: string): PaidTime => ({ workday, milliseconds: hours * hour, hourlyWage: decimal(wage) });
const opening = (through: string, allPay: string, straightPay = allPay) => ({ through, allPay: decimal(allPay), straightPay: decimal(straightPay) });
const week = (...list: PaidTime[]) => ({ time: list, terms });
const plain = (list: readonly { readonly allPay: { toFixed(): string }; readonly straightPay: { toFixed(): string } }[]) => list.map((before) => [before.allPay.toFixed(), before.straightPay.toFixed()]);

// Made-up state rate and insurance: the rows of test/published/labor-burden.test.ts.
const COMPONENTS = ([['6.2', '184500'], ['1.45', null], ['0.6', '7000'], ['2.7', '9000'], ['6.5', null]] as const).map(([percent, cap]) => ({ percent: decimal(percent), yearlyWageCap: cap === null ? null : decimal(cap) }));

test.each([
  ['0', '174.5'],
  ['6500', '171.5'],
  ['20000', '141.5'],
  ['184500', '79.5'],
])('puts the burden on a first week of 1,000 after opening wages of %s where the caps have it', (wages, burden) => {
  const [before] = yearToDate([week(time('2027-05-03', 40, '25'))], opening('2027-04-30', wages));
  expect(sumDecimals(COMPONENTS.map((component) => burdenOn(component, decimal(1000), before?.allPay ?? decimal(NaN), 'USD'))).toFixed()).toBe(burden);
});

test('starts at nothing without opening wages, and adds each week with its premium', () => {
  expect(plain(yearToDate([week(time('1', 50, '20')), week(time('8', 10, '20')), week(time('15', 1, '20'))], null))).toEqual([['0', '0'], ['1100', '1000'], ['1300', '1200']]);
});

test('takes the part of a week that the opening wages hold: its own wages, and the premium by the minute', () => {
  // 30 h at 20 and 20 h at 30: 1,200, and 10 h × 12 more. By the second day 600, and 72 of the premium.
  const weeks = [week(time('2', 30, '20'), time('3', 20, '30')), week(time('9', 1, '20'))];
  expect(plain(yearToDate(weeks, opening('2', '5000', '4900')))).toEqual([['4328', '4300'], ['5648', '5500']]);
});

test('never starts a cap below what the hours kept here show, whatever was entered', () => {
  expect(plain(yearToDate([week(time('1', 10, '20')), week(time('8', 10, '20'))], opening('9', '399.99')))).toEqual([['0', '0'], ['200', '200']]);
});

const anyWeeks = fc.array(fc.array(fc.record({ milliseconds: fc.integer({ min: 0, max: 20 * hour }), hourlyWage: fc.integer({ min: 0, max: 900_000 }).map((n) => decimal(n).div(10_000)), day: fc.integer({ min: 0, max: 6 }) }), { minLength: 1, maxLength: 8 }), { minLength: 1, maxLength: 8 }).map((list) =>
  list.map((pieces, index) => week(...pieces.map(({ day, ...piece }) => ({ ...piece, workday: String(2_000 + index * 7 + day) })))),
);

test('after its day, opening wages and what was earned since are all there is before a week', () => {
  fc.assert(
    fc.property(anyWeeks, fc.nat({ max: 8 }), (weeks, held) => {
      const through = String(1_999 + held * 7);
      const before = yearToDate(weeks, opening(through, '99999999', '99999999'));
      const since = weeks.slice(held).map((one) => weekPay(one.time, terms));
      since.forEach((_, index) => {
        const earned = sumDecimals(since.slice(0, index).flatMap(({ straightPay, premium }) => [straightPay, premium]));
        expect(before[held + index]?.allPay.toFixed()).toBe(earned.plus('99999999').toFixed());
      });
    }),
  );
});

test('only rises, and by no more than a week was paid', () => {
  fc.assert(
    fc.property(anyWeeks, fc.nat({ max: 60 }), fc.nat({ max: 90_000 }), (weeks, day, wages) => {
      const before = yearToDate(weeks, opening(String(2_000 + day), String(wages)));
      before.slice(1).forEach((later, index) => {
        const { straightPay, premium } = weekPay(weeks[index]?.time ?? [], terms);
        expect(later.allPay.minus(before[index]?.allPay ?? 0).toFixed()).toBe(straightPay.plus(premium).toFixed());
      });
    }),
  );
});
