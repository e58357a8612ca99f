/**
 * ASHRAE Transactions 104(1A), 1998, paper 4146 (abstract, V): the evaporation equation of pools, and 74 % of it measured for
 * undisturbed ones. Saturation by Hyland and Wexler 1983 (coefficients from memory, M); the values are D, computed from both.
 * Tolerance 0.5 % where a figure is printed to three digits.
 */
import { convert, fromSi } from '../../src/domain/quantity/index.js';
import { evaporation, panEvaporation, saturationPressurePa } from '../../src/domain/trade/water-balance/index.js';

const celsius = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;

it.each([[70, 0.7396], [75, 0.8756], [80, 1.033]])('water at %d degF has a vapor pressure of %d inHg (D)', (fahrenheit, inHg) => {
  expect(Math.abs(saturationPressurePa(celsius(fahrenheit)) / 3386.389 / inHg - 1)).toBeLessThan(2e-4);
});

it.each([
  ['calm', 0, 6.49, 18.7, 0.15],
  ['at 3 mph', 3, 14.16, 40.8, 0.328],
])('200 ft2 at 75 degF under air of 80 degF and 50 %% lose as published, %s (D)', (_, mph, poundsPerHour, gallons, inches) => {
  const result = evaporation({ areaM2: convert(200, 'ft2', 'm2'), waterC: celsius(75), airC: celsius(80), relativeHumidityPercent: 50, windMPerS: mph * 0.44704 });
  expect(Math.abs(convert(result.kgPerHour, 'kg', 'lb') / poundsPerHour - 1)).toBeLessThan(0.005);
  expect(Math.abs(fromSi(result.m3PerDay, 'gal') / gallons - 1)).toBeLessThan(0.005);
  expect(Math.abs(fromSi(result.depthMPerDay, 'in') / inches - 1)).toBeLessThan(0.005);
  expect(result.undisturbedKgPerHour / result.kgPerHour).toBeCloseTo(0.74, 12);
});

it('48 in a year from a pan are 33.6 in and 4,189 gal from 200 ft2 (0.7 is M, product D; NOAA Technical Reports NWS 33 and 34)', () => {
  const { depthM, volumeM3 } = panEvaporation(convert(200, 'ft2', 'm2'), convert(48, 'in', 'm'), 0.7);
  expect(fromSi(depthM, 'in')).toBeCloseTo(33.6, 9);
  expect(fromSi(volumeM3, 'gal')).toBeCloseTo(4189, 0);
});
