import fc from 'fast-check';
import { decimal, plain } from '../../src/domain/decimal.js';
import { formatMoney, parseMoney, roundMoney, toMoney } from '../../src/domain/money/index.js';
import { refusals } from './support.js';

const cents = fc.bigInt({ min: -99_999_999_999_999n, max: 99_999_999_999_999n }).map((n) => decimal(n.toString()).div(100));

test.each(['1e3', 'NaN', 'Infinity', '', ' 1', '1 ', '1,000.00', '+1', '.5', '5.', '0x10', '--1', '1.2.3', 5, null])(
  'refuses %j for an amount',
  (amount) => {
    expect(refusals(() => parseMoney({ amount: amount as string, currency: 'USD' }))).toEqual(['/amount']);
  },
);

test.each([
  ['1.234', 'USD'],
  ['1.230000001', 'USD'],
  ['1.5', 'JPY'],
  ['1.0001', 'KWD'],
  ['1000000000000.00', 'USD'],
  ['-1000000000000.00', 'USD'],
])('refuses %s %s, which has too many decimals or is too large', (amount, currency) => {
  expect(refusals(() => parseMoney({ amount, currency }))).toEqual(['/amount']);
});

test.each(['usd', 'XXX', '', 'ZZZ'])('refuses %j for a currency', (currency) => {
  expect(refusals(() => parseMoney({ amount: '1.00', currency }))).toEqual(['/currency']);
});

test.each([
  ['999999999999.99', 'USD', '999999999999.99'],
  ['-0.00', 'USD', '0.00'],
  ['7', 'USD', '7.00'],
  ['007.5', 'USD', '7.50'],
  ['1500', 'JPY', '1500'],
  ['1.5', 'KWD', '1.500'],
])('reads %s %s and writes it as %s', (amount, currency, written) => {
  expect(formatMoney(parseMoney({ amount, currency }), currency)).toEqual({ amount: written, currency });
});

test('knows no negative nothing, neither read nor written', () => {
  expect(parseMoney({ amount: '-0.00', currency: 'USD' }).isNegative()).toBe(false);
  expect(formatMoney(decimal('-0'), 'USD').amount).toBe('0.00');
  expect(toMoney(decimal('-0.001'), 'USD').amount).toBe('0.00');
});

test('reads back every amount it writes', () => {
  fc.assert(fc.property(cents, (amount) => parseMoney(formatMoney(amount, 'USD')).eq(amount)));
});

test('refuses to write an amount that was not rounded, rather than dropping its fraction', () => {
  expect(refusals(() => formatMoney(decimal('1.005'), 'USD'))).toEqual(['/amount']);
  expect(toMoney(decimal('1.005'), 'USD').amount).toBe('1.01');
});

test('rounds a credit to the mirror of its charge', () => {
  fc.assert(
    fc.property(fc.bigInt({ min: -(10n ** 15n), max: 10n ** 15n }), (n) => {
      const amount = decimal(n.toString()).div(100_000);
      expect(plain(roundMoney(amount.neg(), 'USD'))).toBe(plain(roundMoney(amount, 'USD').neg()));
    }),
  );
});
