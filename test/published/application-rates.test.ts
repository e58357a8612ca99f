/**
 * V: Virginia Department of Wildlife Resources, "Formulas for determining application rates", and Mississippi State
 * Extension: factors for 1 ppm; the ×120 rule for salt. D: doses of salt and bicarbonate from them and from molar masses.
 */
import { convert, type Unit } from '../../src/domain/quantity/index.js';
import { alkalinityDose, ALKALINITY_FORMS, concentrationDose, saltDose, volumeFromSalt } from '../../src/domain/trade/chemistry/index.js';

const M3_PER_GAL = convert(1, 'gal', 'm3');
const pounds = (grams: number) => convert(grams / 1000, 'kg', 'lb');

it.each<[string, number, Unit, number, number]>([
  ['1 gal takes 0.0038 g', 1, 'gal', 0.0038, 0.00005],
  ['1 ft3 takes 0.0283 g', 1, 'ft3', 0.0283, 0.00005],
  ['a million gal take 8.345 lb', 1e6, 'gal', convert(8.345, 'lb', 'kg') * 1000, 0.3],
  ['an acre-foot takes 2.72 lb', 43_560, 'ft3', convert(2.72, 'lb', 'kg') * 1000, 2.3],
])('V: for 1 ppm %s', (_, value, unit, grams, tolerance) => {
  expect(Math.abs(concentrationDose(convert(value, unit, 'm3'), 1, 100).doseGrams - grams)).toBeLessThanOrEqual(tolerance);
});

it.each([[0.1, 8.35], [0.3, 25.04]])('D: 1,000 gal to %d percent take %d lb of salt', (percent, lb) => {
  expect(Math.abs(pounds(saltDose(1000 * M3_PER_GAL, 0, percent * 10).doseGrams) - lb)).toBeLessThanOrEqual(0.005);
});

it('D: 1 lb in 100 gal is 0.12 percent', () => {
  expect(Math.abs(pounds(saltDose(100 * M3_PER_GAL, 0, 1.2).doseGrams) - 1)).toBeLessThan(0.005);
});

it('V: 10 lb that raise the reading by 1 ppt tell of 1,200 gal by the trade\'s rule, D: 1,198.3 exactly', () => {
  const gallons = convert(volumeFromSalt(convert(10, 'lb', 'kg'), 0.2, 1.2, 0.1).volumeM3, 'm3', 'gal');
  expect(Math.abs(gallons - 1198.3)).toBeLessThan(0.05);
  expect(Math.abs(gallons / 1200 - 1)).toBeLessThan(0.002);
});

const alkalinity = (volumeM3: number, rise: number, mostPerDayMgPerL = 25) =>
  alkalinityDose({ volumeM3, presentMgPerL: 50, targetMgPerL: 50 + rise, form: 'sodium-bicarbonate', activePercent: 100, mostPerDayMgPerL });

it('D: 10 mg/L of alkalinity in 1,000 gal take 0.1401 lb of bicarbonate, and 1 lb raises 71.4 mg/L', () => {
  expect(Math.abs(pounds(alkalinity(1000 * M3_PER_GAL, 10).doseGrams) - 0.1401)).toBeLessThanOrEqual(0.00005);
  expect(Math.abs(pounds(alkalinity(1000 * M3_PER_GAL, 71.4).doseGrams) - 1)).toBeLessThanOrEqual(0.001);
});

it('D: bicarbonate takes 1.67867 by weight and soda ash 1.05896', () => {
  expect(ALKALINITY_FORMS['sodium-bicarbonate']).toBeCloseTo(1.67867, 5);
  expect(ALKALINITY_FORMS['sodium-carbonate']).toBeCloseTo(1.05896, 5);
});

it.each([[20, 1], [25, 1], [26, 2], [60, 3]])('C: spreads a rise of %d mg/L over %d days of at most 25', (rise, days) => {
  expect(alkalinity(1, rise).days).toBe(days);
});
