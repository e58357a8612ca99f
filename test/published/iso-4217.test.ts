// ISO 4217, list one as published 2024-06-25, carried by the npm package currency-codes. Codes without a minor unit
// (metals, bond units, SDR, test codes) are "N.A." in the list and 0 in the package: named here, and no money.
// XCG replaced ANG on 2025-03-31: M.
import { codes, code as record, publishDate } from 'currency-codes';
import { minorUnits } from '../../src/domain/money/index.js';

const NO_MINOR_UNIT = ['XAG', 'XAU', 'XBA', 'XBB', 'XBC', 'XBD', 'XDR', 'XPD', 'XPT', 'XSU', 'XTS', 'XUA', 'XXX'];

test('the package carries the list that the digits were taken from', () => {
  expect(publishDate).toBe('2024-06-25');
});

test.each(codes().filter((code) => !NO_MINOR_UNIT.includes(code)))('%s has the digits of the list', (code) => {
  expect(minorUnits(code)).toBe(record(code)?.digits);
});

test.each(NO_MINOR_UNIT)('%s is no money to bill in', (code) => {
  expect(() => minorUnits(code)).toThrow('ISO 4217');
});

test.each([
  ['USD', 2],
  ['EUR', 2],
  ['JPY', 0],
  ['KRW', 0],
  ['CLP', 0],
  ['ISK', 0],
  ['KWD', 3],
  ['BHD', 3],
  ['TND', 3],
  ['IQD', 3],
  ['CLF', 4],
  ['UYW', 4],
  ['HUF', 2],
  ['MGA', 2],
  ['MRU', 2],
  ['XCG', 2],
])('M: %s has %d digits, whatever its display digits', (code, digits) => {
  expect(minorUnits(code)).toBe(digits);
});

test.each(['usd', 'US', 'ZZZ', '', 'constructor'])('refuses %j', (code) => {
  expect(() => minorUnits(code)).toThrow('three-letter code');
});
