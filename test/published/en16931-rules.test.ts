// EN 16931 validation artefacts, release validation-1.3.16, test/Invoice-unit-UBL (EUPL 1.2): V, the official unit-test
// vectors. "accepted" says whether the official rule lets the claimed figure pass; ours must equal it exactly then.
import { decimal } from '../../src/domain/decimal.js';
import { taxByCategory } from '../../src/domain/money/index.js';
import { quoteTotals } from '../../src/domain/pricing/index.js';

const untaxed = (amounts: number[]) => amounts.map((amount) => ({ category: null, amount: decimal(amount) }));
const category = (code: string, rate: number) => ({ code, name: code, rate: decimal(rate) });

test.each([
  ['1000', 25, '250', true],
  ['-6491.34', 25, '-1622.84', true],
  ['6491.34', 25, '1622.84', true],
  ['2141.05', 14, '299.75', true],
  ['2141.19', 2.1, '44.96', true],
  ['-2141.19', 5.5, '-117.77', true],
  ['-25.00', 0, '0', true],
  ['1000', 25, '251', false],
  ['2141.19', 2.1, '43.91', false],
])('BR-CO-17: %s at %d %% is %s (%s)', (base, rate, claimed, accepted) => {
  const { taxes } = taxByCategory([{ category: 'S', amount: decimal(base) }], [category('S', rate)], 'EUR');
  expect(taxes[0]?.tax.eq(claimed)).toBe(accepted);
});

test.each([
  [[110, 90], '200', true],
  [[110, -90], '20', true],
  [[110, 90], '200.01', false],
  [[-90], '-91', false],
])('BR-CO-10: the lines %j sum to %s (%s)', (lines, claimed, accepted) => {
  expect(quoteTotals(untaxed(lines), [], 'EUR').netTotal.eq(claimed)).toBe(accepted);
});

// Allowances and charges on the document are lines of their own here, with their sign.
test.each([
  [[1000, -100, 100], '1000', true],
  [[1000, -100], '900', true],
  [[1000, 100], '1100', true],
  [[-1000, -100, 100], '-1000', true],
  [[0, -100], '-100', true],
  [[1100, -100], '1000.01', false],
  [[1000], '1001', false],
])('BR-CO-13: lines, allowances and charges %j make a net of %s (%s)', (lines, claimed, accepted) => {
  expect(quoteTotals(untaxed(lines), [], 'EUR').netTotal.eq(claimed)).toBe(accepted);
});

test.each([
  [[1000, 1500], '400', true],
  [[1000], '300', false],
])('BR-CO-14: the taxes on bases %j sum to %s (%s)', (bases, claimed, accepted) => {
  const rates = [25, 10];
  const lines = bases.map((amount, i) => ({ category: `S${i}`, amount: decimal(amount) }));
  const categories = bases.map((_, i) => category(`S${i}`, rates[i] ?? 0));
  expect(taxByCategory(lines, categories, 'EUR').taxTotal.eq(claimed)).toBe(accepted);
});

test.each([
  ['1000', 30, '1300', true],
  ['1000', 25, '1250.01', false],
])('BR-CO-15: net %s with tax at %d %% is gross %s (%s)', (net, rate, claimed, accepted) => {
  const totals = quoteTotals([{ category: 'S', amount: decimal(net) }], [category('S', rate)], 'EUR');
  expect(totals.grossTotal.eq(claimed)).toBe(accepted);
});

test('BR-CO-15: a net of -100 with taxes of 300 is 200', () => {
  const lines = [
    { category: 'S', amount: decimal(1200) },
    { category: null, amount: decimal(-1300) },
  ];
  expect(quoteTotals(lines, [category('S', 25)], 'EUR').grossTotal.toFixed(2)).toBe('200.00');
});
