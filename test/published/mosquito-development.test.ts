/**
 * V: North Dakota Department of Health, Culex tarsalis 14 days at 70 degF and 10 at 80; CDC life-cycle page, Culex 7 to 10
 * days; Loetti, Schweigmann & Burroni 2011 (abstract), Culex pipiens females 199.5 degree days above 5.5 degC from first larva to adult; a
 * label for rings. D: the line between. C: the schedule rule, an interval shorter than 5 to 7 days.
 */
import { convert } from '../../src/domain/quantity/index.js';
import { larvicideRings, mosquitoBreeding, mosquitoDevelopmentDays } from '../../src/domain/trade/life/index.js';

const celsius = (fahrenheit: number) => (fahrenheit - 32) / 1.8;
const days = (fahrenheit: number) => mosquitoDevelopmentDays(celsius(fahrenheit)) ?? Number.NaN;

it.each([[70, 14], [80, 10], [75, 12]])('at %d degF it takes %d days from egg to adult', (fahrenheit, expected) => {
  expect(days(fahrenheit)).toBeCloseTo(expected, 9);
});

it.each([80, 85, 90, 95])('V: at %d degF it takes the 7 to 10 days of the CDC', (fahrenheit) => {
  expect(days(fahrenheit)).toBeGreaterThanOrEqual(7);
  expect(days(fahrenheit)).toBeLessThanOrEqual(10 + 1e-9);
});

it.each([70, 75, 80, 90])('V: at %d degF it takes the 5 to 14 days of a county public-works page', (fahrenheit) => {
  expect(days(fahrenheit)).toBeGreaterThanOrEqual(5);
  expect(days(fahrenheit)).toBeLessThanOrEqual(14);
});

it.each([15, 20, 25, 30])('V: at %d degC it is within a quarter of the thermal sum of Culex pipiens', (degrees) => {
  expect(Math.abs((mosquitoDevelopmentDays(degrees) ?? 0) / (199.5 / (degrees - 5.5)) - 1)).toBeLessThan(0.25);
});

it('V: stops below 9.8 degC', () => {
  expect(mosquitoDevelopmentDays(9.7)).toBeNull();
  expect(mosquitoDevelopmentDays(9.8)).not.toBeNull();
});

it.each([[60, 7], [70, 7], [80, 5]])('C: at %d degF still water is emptied at least every %d days', (fahrenheit, interval) => {
  expect(mosquitoBreeding({ celsius: celsius(fahrenheit), volumeM3: 1, flowM3PerS: 0, zones: [] }).intervalDays).toBeCloseTo(interval, 9);
});

it.each([[1, 1], [100, 1], [101, 2], [176, 2], [200, 2], [300, 3]])('V: %d ft2 take %d rings, whatever the depth', (squareFeet, rings) => {
  expect(larvicideRings(convert(squareFeet, 'ft2', 'm2'))).toBe(rings);
});
