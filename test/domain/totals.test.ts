import fc from 'fast-check';
import { decimal, plain, sumDecimals } from '../../src/domain/decimal.js';
import { taxByCategory, type TaxableLine } from '../../src/domain/money/index.js';
import { quoteTotals, type QuoteTotals } from '../../src/domain/pricing/index.js';
import { refusals } from './support.js';

const categories = [
  { code: 'sales', name: 'Sales tax', rate: decimal('6.25') },
  { code: 'zero', name: 'Exempt', rate: decimal(0) },
  { code: 'haul', name: 'Hauling levy', rate: decimal('3.3333') },
];

const line: fc.Arbitrary<TaxableLine> = fc.record({
  category: fc.constantFrom(null, 'sales', 'zero', 'haul'),
  amount: fc.integer({ min: -100_000_000, max: 100_000_000 }).map((n) => decimal(n).div(100)),
});
const lines = fc.array(line, { maxLength: 40 });

const printed = (totals: QuoteTotals) => ({
  net: plain(totals.netTotal),
  gross: plain(totals.grossTotal),
  taxes: totals.taxes.map(({ category, base, tax }) => [category, plain(base), plain(tax)]),
});

test('totals alike whatever the order of the lines', () => {
  const shuffled = lines.chain((list) =>
    fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length, maxLength: list.length })),
  );
  fc.assert(
    fc.property(shuffled, ([one, other]) => {
      expect(printed(quoteTotals(one, categories, 'USD'))).toEqual(printed(quoteTotals(other, categories, 'USD')));
    }),
  );
});

test('totals what is printed: lines make the net, bases and untaxed lines too, net and taxes the gross', () => {
  fc.assert(
    fc.property(lines, (list) => {
      const totals = quoteTotals(list, categories, 'USD');
      const untaxed = list.filter(({ category }) => category === null).map(({ amount }) => amount);
      expect(plain(totals.netTotal)).toBe(plain(sumDecimals(list.map(({ amount }) => amount))));
      expect(plain(sumDecimals([...totals.taxes.map(({ base }) => base), ...untaxed]))).toBe(plain(totals.netTotal));
      const taxes = sumDecimals(totals.taxes.map(({ tax }) => tax));
      expect(plain(totals.netTotal.plus(taxes))).toBe(plain(totals.grossTotal));
    }),
  );
});

test('lists the categories in the company\'s order, only those with lines, at 0 % too', () => {
  const list = ['zero', 'sales', null].map((category) => ({ category, amount: decimal(10) }));
  const { taxes, taxTotal } = taxByCategory(list, categories, 'USD');
  expect(taxes.map(({ category, name, tax }) => [category, name, tax.toFixed(2)])).toEqual([
    ['sales', 'Sales tax', '0.63'],
    ['zero', 'Exempt', '0.00'],
  ]);
  expect(taxTotal.toFixed(2)).toBe('0.63');
});

test('totals an empty quote to nothing', () => {
  expect(printed(quoteTotals([], categories, 'USD'))).toEqual({ net: '0', gross: '0', taxes: [] });
});

test('refuses a line of an unknown category, a code twice, and a rate outside 0 to 100', () => {
  const unknown = [{ category: null, amount: decimal(1) }, { category: 'vat', amount: decimal(1) }];
  const named = (code: string, rate: string) => ({ code, name: code, rate: decimal(rate) });
  expect(refusals(() => taxByCategory(unknown, categories, 'USD'))).toEqual(['/lines/1/category']);
  expect(refusals(() => taxByCategory([], [named('a', '1'), named('a', '2')], 'USD'))).toEqual(['/categories/1/code']);
  expect(refusals(() => taxByCategory([], [named('a', '-1')], 'USD'))).toEqual(['/categories/0/rate']);
  expect(refusals(() => taxByCategory([], [named('a', '100.01')], 'USD'))).toEqual(['/categories/0/rate']);
  expect(refusals(() => taxByCategory([], [named('a', 'NaN')], 'USD'))).toEqual(['/categories/0/rate']);
});

test('refuses a total that money cannot hold, net or gross', () => {
  const most = { category: 'sales', amount: decimal('999999999999.99') };
  expect(refusals(() => quoteTotals([most, most], categories, 'USD'))).toEqual(['/lines']);
  expect(refusals(() => quoteTotals([most], categories, 'USD'))).toEqual(['/lines']);
});
