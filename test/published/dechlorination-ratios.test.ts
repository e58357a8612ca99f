/**
 * V: laboratory technical note, 7.0 mg of thiosulfate pentahydrate for each mg of chlorine; Disinfection of Pipelines and
 * Storage Facilities field guide, Table 7-2, for bisulfite and ascorbic acid; EPA maximum residual disinfectant level, as
 * the Oregon Health Authority states it. D: the other ratios, from molar masses.
 */
import { convert } from '../../src/domain/quantity/index.js';
import { dechlorination, dechlorinationRatio, type Dechlorinator, type ThiosulfateReaction } from '../../src/domain/trade/chemistry/index.js';

const ROWS: [Dechlorinator, ThiosulfateReaction, number, number][] = [
  ['thiosulfate-pentahydrate', 'tetrathionate', 7, 0.005],
  ['thiosulfate-anhydrous', 'tetrathionate', 4.46, 0.005],
  ['thiosulfate-pentahydrate', 'sulfate-and-sulfur', 3.5, 0.005],
  ['thiosulfate-anhydrous', 'sulfate-and-sulfur', 2.23, 0.005],
  ['thiosulfate-pentahydrate', 'sulfate', 0.875, 0.0005],
  ['thiosulfate-anhydrous', 'sulfate', 0.557, 0.0005],
  ['sodium-bisulfite', 'tetrathionate', 1.61, 1e-9],
  ['ascorbic-acid', 'tetrathionate', 2.5, 1e-9],
];

it.each(ROWS)('%s (to %s) takes %d mg for each mg of chlorine', (form, reaction, ratio, tolerance) => {
  expect(Math.abs(dechlorinationRatio(form, reaction) - ratio)).toBeLessThanOrEqual(tolerance);
});

it('V: the field guide\'s 1.9 mg of thiosulfate lies between the reactions to sulfate and to sulfate and sulfur', () => {
  expect(dechlorinationRatio('thiosulfate-anhydrous', 'sulfate')).toBeLessThan(1.9);
  expect(dechlorinationRatio('thiosulfate-anhydrous', 'sulfate-and-sulfur')).toBeGreaterThan(1.9);
});

it('V: says that more than the 4 mg/L of the EPA\'s maximum residual disinfectant level is to be measured again', () => {
  expect(dose(4.1).warnings.join()).toContain('measure again');
  expect(dose(4).warnings.join()).not.toContain('measure again');
});

const dose = (chlorineMgPerL: number, chloramine = false, activePercent = 100) =>
  dechlorination({ addedVolumeM3: convert(1000, 'gal', 'm3'), chlorineMgPerL, chloramine, form: 'thiosulfate-pentahydrate', reaction: 'tetrathionate', activePercent });

it.each([[1, 26.5], [2, 53]])('D: 1,000 gal with %d mg/L take %d g of pentahydrate', (mgPerL, grams) => {
  expect(Math.abs(dose(mgPerL).doseGrams - grams)).toBeLessThanOrEqual(0.005);
});

it('D: half the strength takes twice the product', () => {
  expect(dose(1, false, 50).doseGrams).toBeCloseTo(2 * dose(1).doseGrams, 12);
});

it('D: chloramine leaves 0.1975 mg of nitrogen for each mg of chlorine, and says so; free chlorine leaves none', () => {
  expect(dose(2, true).ammoniaLeftMgPerL).toBeCloseTo(0.3951, 4);
  expect(dose(2, true).warnings.join()).toContain('Chloramine leaves 0.40 mg/L');
  expect(dose(2).ammoniaLeftMgPerL).toBe(0);
});

it('defers to the label, and says that the dose is for the added water', () => {
  expect(dose(1).warnings.join()).toMatch(/label and a qualified person.*water that is added/s);
});
