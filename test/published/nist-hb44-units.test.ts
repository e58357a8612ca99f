// NIST Handbook 44, Appendix C, General Tables of Units of Measurement.
// V: read in the handbook as reproduced in a book appendix; the acre-foot's gallons in Virginia Department of Wildlife
// Resources, "Formulas for determining application rates" (V). D: follows from the definitions, computed with Python.
import { convert, toSi, type Unit } from '../../src/domain/quantity/index.js';

test.each<[mark: string, value: number, from: Unit, to: Unit, expected: number]>([
  ['D, 0.0254 cubed x 231 in3', 1, 'gal', 'L', 3.785411784],
  ['D, 1728/231', 1, 'ft3', 'gal', 7.480519480519481],
  ['D, 27 x 1728/231', 1, 'yd3', 'gal', 201.97402597402598],
  ['D', 1, 'yd3', 'm3', 0.764554857984],
  ['D, 43,560 ft3 of water', 43_560, 'ft3', 'gal', 325_851.4285714286],
  ['D', 43_560, 'ft3', 'm3', 1233.48183754752],
  ['D, 1 gpm in L/s is 0.0630901964', 1, 'gpm', 'L/min', 3.785411784],
  ['D, 0.45359237 x 2,000 lb', 1, 'ton', 'kg', 907.18474],
])('%s: %d %s in %s', (_mark, value, from, to, expected) => {
  expect(convert(value, from, to) / expected).toBeCloseTo(1, 14);
});

test.each<[value: number, from: Unit, to: Unit, expected: number]>([
  [1, 'yd3', 'ft3', 27],
  [1, 'yd2', 'ft2', 9],
  [1, 'yd', 'in', 36],
  [1, 'ft', 'm', 0.3048],
  [24, 'ft', 'm', 7.3152],
  [1, 'ton', 'lb', 2000],
  [1, 't', 'kg', 1000],
  [1, 'lb', 'kg', 0.45359237],
  [60, 'gph', 'gpm', 1],
  [1000, 'L', 'm3', 1],
])('is exact to the last bit: %d %s in %s', (value, from, to, expected) => {
  expect(convert(value, from, to)).toBe(expected);
});

test.each<[value: number, from: Unit, to: Unit, printed: number, decimals: number]>([
  [1, 'ft3', 'gal', 7.481, 3],
  [1, 'yd3', 'm3', 0.765, 3],
])('V: agrees with the printed row %d %s in %s', (value, from, to, printed, decimals) => {
  expect(convert(value, from, to).toFixed(decimals)).toBe(printed.toFixed(decimals));
});

test('V: a gallon is 231 cubic inches exactly, and an imperial gallon is not ours', () => {
  const cubicInch = 0.0254 ** 3;
  expect(toSi({ value: 1, unit: 'gal' }) / cubicInch).toBeCloseTo(231, 10);
});

test('V: an acre-foot, 43,560 cubic feet, is printed as 326,000 gallons', () => {
  expect(Math.round(convert(43_560, 'ft3', 'gal') / 1000)).toBe(326);
});

test('D: an inch over a square foot is 0.623376623 gal, a cubic foot a second 448.8311688 gpm, a cubic yard 0.000619835 acre-feet', () => {
  expect(convert(1 / 12, 'ft3', 'gal')).toBeCloseTo(0.623376623, 9);
  expect(convert(60, 'ft3', 'gal')).toBeCloseTo(448.8311688, 7);
  expect(convert(1, 'yd3', 'ft3') / 43_560).toBeCloseTo(0.000619835, 9);
});

test('D: a gallon a minute is 0.002228009259 cubic feet a second', () => {
  const cubicFoot = toSi({ value: 1, unit: 'ft3' });
  expect(toSi({ value: 1, unit: 'gpm' }) / cubicFoot).toBeCloseTo(0.002228009259, 12);
});
