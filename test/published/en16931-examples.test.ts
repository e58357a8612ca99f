// EN 16931 validation artefacts, release validation-1.3.16, ubl/examples and cii/examples (EUPL 1.2): V, amounts parsed
// from the official example invoices. Document allowances and charges are lines of their own, with their sign.
import { decimal, sumDecimals, type Decimal } from '../../src/domain/decimal.js';
import { allocate } from '../../src/domain/money/index.js';
import { otherLine, quoteTotals } from '../../src/domain/pricing/index.js';

type Row = [net: string, rate: string] | [net: string, rate: string, quantity: string, unitPrice: string];

interface Example {
  file: string;
  currency: string;
  rows: Row[];
  taxes: [rate: string, base: string, tax: string][];
  totals: [net: string, tax: string, gross: string];
}

const examples: Example[] = [
  {
    file: 'ubl-tc434-example1',
    currency: 'EUR',
    rows: [
      ['19.90', '6', '2', '9.95'],
      ['9.85', '6'],
      ['8.29', '6'],
      ['14.46', '6', '2', '7.23'],
      ['35.00', '6'],
      ['35.00', '6'],
      ['10.65', '6'],
      ['1.55', '6'],
      ['14.37', '6', '3', '4.79'],
      ['8.29', '6'],
      ['16.58', '6', '2', '8.29'],
      ['9.95', '6'],
      ['3.30', '6', '2', '1.65'],
      ['3.90', '6'],
      ['102.12', '6', '6', '17.02'],
      ['-109.98', '6'],
      ['10.80', '21'],
      ['7.60', '21', '2', '3.80'],
      ['9.34', '21', '2', '4.67'],
      ['18.63', '21'],
    ],
    taxes: [
      ['6', '183.23', '10.99'],
      ['21', '46.37', '9.74'],
    ],
    totals: ['229.60', '20.73', '250.33'],
  },
  {
    file: 'ubl-tc434-example2',
    currency: 'NOK',
    rows: [
      ['1273.00', '25'],
      ['-3.96', '15', '-1', '3.96'],
      ['4.96', '15', '2', '2.48'],
      ['-25.00', '0'],
      ['187.50', '25', '250', '0.75'],
      ['-100.00', '25'],
      ['100.00', '25'],
    ],
    taxes: [
      ['0', '-25.00', '0.00'],
      ['15', '1.00', '0.15'],
      ['25', '1460.50', '365.13'],
    ],
    totals: ['1436.50', '365.28', '1801.78'],
  },
  {
    file: 'ubl-tc434-example3',
    currency: 'DKK',
    rows: [
      ['800.00', '25'],
      ['800.00', '10'],
      ['100.00', '25'],
    ],
    taxes: [
      ['10', '800.00', '80.00'],
      ['25', '900.00', '225.00'],
    ],
    totals: ['1700.00', '305.00', '2005.00'],
  },
  {
    file: 'ubl-tc434-example4',
    currency: 'DKK',
    rows: [
      ['1000.00', '25', '1000', '1.00'],
      ['500.00', '25', '100', '5.00'],
      ['2500.00', '12', '500', '5.00'],
    ],
    taxes: [
      ['12', '2500.00', '300.00'],
      ['25', '1500.00', '375.00'],
    ],
    totals: ['4000.00', '675.00', '4675.00'],
  },
  {
    file: 'ubl-tc434-example7',
    currency: 'SEK',
    rows: [
      ['2500.00', '0'],
      ['700.00', '0'],
    ],
    taxes: [['0', '3200.00', '0.00']],
    totals: ['3200.00', '0.00', '3200.00'],
  },
  {
    file: 'ubl-tc434-example9',
    currency: 'EUR',
    rows: [['147.00', '21', '3', '49.00']],
    taxes: [['21', '147.00', '30.87']],
    totals: ['147.00', '30.87', '177.87'],
  },
  {
    file: 'CII_business_example_02',
    currency: 'EUR',
    rows: [
      ['1.26', '19', '1', '1.2605'],
      ['1.26', '19'],
      ['7.48', '19', '1', '7.4790'],
    ],
    taxes: [['19', '10.00', '1.90']],
    totals: ['10.00', '1.90', '11.90'],
  },
  {
    file: 'CII-BR-CO-10-RoundingIssue',
    currency: 'EUR',
    rows: [
      ['720.81', '19'],
      ['0.01', '0'],
      ['-720.81', '19'],
      ['-0.01', '0'],
    ],
    taxes: [
      ['0', '0.00', '0.00'],
      ['19', '0.00', '0.00'],
    ],
    totals: ['0.00', '0.00', '0.00'],
  },
];

function totalsOf({ rows, currency, taxes }: Example) {
  const lines = rows.map(([net, rate]) => ({ category: rate, amount: decimal(net) }));
  const categories = taxes.map(([rate]) => ({ code: rate, name: `${rate} %`, rate: decimal(rate) }));
  return quoteTotals(lines, categories, currency);
}

const cents = (amount: Decimal) => amount.toFixed(2);

test.each(examples)('V: $file has its printed taxes and totals', (example) => {
  const result = totalsOf(example);
  expect(result.taxes.map(({ category, base, tax }) => [category, cents(base), cents(tax)])).toEqual(example.taxes);
  expect([result.netTotal, result.taxTotal, result.grossTotal].map(cents)).toEqual(example.totals);
});

const computed = examples.flatMap(({ file, currency, rows }) =>
  rows.flatMap(([net, , quantity, price]) =>
    quantity === undefined || price === undefined ? [] : [[file, quantity, price, net, currency] as const],
  ),
);

test.each(computed)('V: in %s, %s at %s is %s', (_file, quantity, unitPrice, net, currency) => {
  const line = otherLine({
    quantity: decimal(quantity),
    unitPrice: decimal(unitPrice),
    unitCost: decimal(0),
    currency,
  });
  expect(cents(line.amount)).toBe(net);
});

test.each([
  ['D: ten lines of 0.99 at 8.25 %', '0.99', 10, '8.25', '0.82'],
  ['D: three lines of 10.05 at 6 %', '10.05', 3, '6', '1.81'],
])('%s are taxed on their sum, not line by line', (_name, amount, count, rate, tax) => {
  const lines = Array.from({ length: count }, () => ({ category: 'S', amount: decimal(amount) }));
  const { taxTotal } = quoteTotals(lines, [{ code: 'S', name: 'S', rate: decimal(rate) }], 'USD');
  expect(cents(taxTotal)).toBe(tax);
});

test('D: a total split over its lines adds up to the printed total again', () => {
  const weights = [720.81, 0.01, 102.12].map(decimal);
  const shares = allocate(decimal('4675.00'), weights, 'DKK');
  expect(cents(sumDecimals(shares))).toBe('4675.00');
});
