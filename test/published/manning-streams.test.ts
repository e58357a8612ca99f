/**
 * Manning's formula. V: worked examples of university courses (open-channel sheet E1.1 of a British one; midterm solutions
 * of San Diego State University, CIVE 530) and of the documentation of the open-source R package `rivr`; a problem of
 * "Practice Problems for the Civil Engineering PE Exam", ch. 19, as the tests of an open-source library reproduce it;
 * Chow's table of n (1959, Table 5-6) as university and agency pages reproduce it; Blodgett 1986 (USGS WRI 86-4127) by a
 * state highway design guide, its factor 0.319 in SI and its figure by the tests of an open-source calculator.
 */
import { convert } from '../../src/domain/quantity/index.js';
import { LININGS, manningFlow, normalDepth, sectionAt, stoneRoughness, type Channel, type Lining } from '../../src/domain/trade/stream/index.js';

const channel = (bottomWidthM: number, sideSlope: number, bedSlope: number): Channel => ({ bottomWidthM, sideSlope, bedSlope });
const FOOT = 0.3048;

it('V: 5.3 m3/s in a channel of 3 m, 1 in 100, n 0.011, run 0.412 m deep, under the critical depth of 0.683 m', () => {
  const bed = channel(3, 0, 0.01);
  expect(Math.abs(normalDepth(bed, () => 0.011, 5.3) - 0.412)).toBeLessThan(0.0005);
  const { areaM2, topWidthM } = sectionAt(bed, 0.683);
  expect(Math.abs(5.3 / areaM2 / Math.sqrt((9.80665 * areaM2) / topWidthM) - 1)).toBeLessThan(0.005);
});

it.each([[0.0025, 0.8, 2.387, 9.548], [0.003, 1.5, 3.498, 26.23]])('V: a channel of 5 m, n 0.015, slope %d, runs at %d m with %d m/s and %d m3/s', (slope, depth, velocity, flow) => {
  const found = manningFlow(channel(5, 0, slope), () => 0.015, depth);
  expect(Math.abs(found / flow - 1)).toBeLessThan(0.0005);
  expect(Math.abs(found / (5 * depth) / velocity - 1)).toBeLessThan(0.0005);
});

it('V: 126 m3/s in a trapezoid of 6.1 m with sides of 1.5 to 1, slope 0.0008, n 0.013, run 3.2864 m deep', () => {
  expect(Math.abs(normalDepth(channel(6.1, 1.5, 0.0008), () => 0.013, 126) - 3.2864)).toBeLessThan(0.00005);
});

it.each([[100, 0.045, 0.001, 250, 1.711301, 0.0002], [2, 0.012, 0.01, 3, 0.314, 0.002]])('V: in feet, %d ft wide, n %d, slope %d: %d ft3/s run %d ft deep', (width, n, slope, flow, depth, tolerance) => {
  const found = normalDepth(channel(width * FOOT, 0, slope), () => n, convert(flow, 'ft3', 'm3')) / FOOT;
  expect(Math.abs(found / depth - 1)).toBeLessThan(tolerance);
});

it.each<[Lining, number, number, number]>([
  ['smooth-stone', 0.015, 0.017, 0.02],
  ['stone-in-mortar', 0.017, 0.02, 0.024],
  ['gravel', 0.022, 0.025, 0.03],
  ['cobble', 0.03, 0.04, 0.05],
  ['boulders', 0.04, 0.05, 0.07],
])('V: Chow has n from %d, usually %d, to %d', (lining, least, usual, most) => {
  expect(LININGS[lining]).toMatchObject({ least, usual, most });
});

it('V: stones of 6 in under water of 16 in on average have n 0.0613, rougher than any bed of cobbles in the table', () => {
  expect(Math.abs(stoneRoughness(0.4064, 0.1524) - 0.061312)).toBeLessThan(0.00001);
});

it('D: in feet the factor 0.319 is 0.262', () => {
  expect(0.319 * FOOT ** (1 / 6)).toBeCloseTo(0.262, 3);
});
