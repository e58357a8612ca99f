import { decimal, plain } from '../../src/domain/decimal.js';
import { compareHours, margin, marginPercent } from '../../src/domain/statistics/index.js';

const hours = (rows: [string, string][]) => rows.map(([costCode, value]) => ({ costCode, hours: decimal(value) }));

test('gives the margin in percent of the contract', () => {
  expect(plain(margin(decimal('5613.11'), decimal('4000')))).toBe('1613.11');
  expect(marginPercent(decimal('5613.11'), decimal('4000'))?.toFixed(2)).toBe('28.74');
  expect(marginPercent(decimal(100), decimal(150))?.toFixed()).toBe('-50');
});

test('gives no percentage of a contract of nothing', () => {
  expect(marginPercent(decimal(0), decimal(150))).toBeNull();
});

test('compares hours by cost code in the order of the plan, unplanned codes last', () => {
  const planned = hours([['edge', '35.25'], ['cleanout', '20.5'], ['edge', '2']]);
  const actual = hours([['travel', '1.5'], ['cleanout', '12'], ['cleanout', '9.25'], ['start-up', '1']]);
  const { byCostCode, ...totals } = compareHours(planned, actual);
  expect(byCostCode.map((row) => [row.costCode, plain(row.planned), plain(row.actual)])).toEqual([
    ['edge', '37.25', '0'],
    ['cleanout', '20.5', '21.25'],
    ['start-up', '0', '1'],
    ['travel', '0', '1.5'],
  ]);
  expect([plain(totals.planned), plain(totals.actual)]).toEqual(['57.75', '23.75']);
});

test('compares alike whatever order the entries come in', () => {
  const actual = hours([['b', '1'], ['a', '2'], ['c', '3'], ['a', '1']]);
  expect(compareHours([], [...actual].reverse())).toEqual(compareHours([], actual));
});

test('compares nothing to nothing', () => {
  const { planned, actual, byCostCode } = compareHours([], []);
  expect([plain(planned), plain(actual), byCostCode]).toEqual(['0', '0', []]);
});
