// Rounding half up, away from zero. V: the EN 16931 unit tests expect -6491.34 at 25 % to be -1622.84, which rounding
// towards plus infinity would miss. The table is D, computed with Python's decimal module (ROUND_HALF_UP).
import { decimal } from '../../src/domain/decimal.js';
import { roundMoney } from '../../src/domain/money/index.js';

test.each([
  ['0.005', '0.01'],
  ['0.015', '0.02'],
  ['0.025', '0.03'],
  ['2.345', '2.35'],
  ['1.005', '1.01'],
  ['-2.345', '-2.35'],
  ['1.255', '1.26'],
  ['10.235', '10.24'],
  ['0.0049999999999999999999999', '0.00'],
])('D: rounds %s to %s', (value, expected) => {
  expect(roundMoney(decimal(value), 'USD').toFixed(2)).toBe(expected);
});

test.each([
  ['JPY', '2.5', '3'],
  ['JPY', '-2.5', '-3'],
  ['KWD', '1.0005', '1.001'],
  ['HUF', '0.005', '0.01'],
])('D: rounds to the minor unit of %s', (currency, value, expected) => {
  expect(roundMoney(decimal(value), currency).toFixed()).toBe(expected);
});

test('V: rounds a quarter of -6491.34 to -1622.84', () => {
  expect(roundMoney(decimal('-6491.34').times('0.25'), 'EUR').toFixed(2)).toBe('-1622.84');
});
