import fc from 'fast-check';
import { alkalinityDose, ALKALINITY_FORMS, concentrationDose, dechlorination, DECHLORINATORS, saltDose, THIOSULFATE_REACTIONS, volumeFromSalt, type AlkalinityForm } from '../../src/domain/trade/chemistry/index.js';
import { refusals } from './support.js';

const volume = fc.double({ min: 0.01, max: 10_000, noNaN: true });
const mgPerL = fc.double({ min: 0.01, max: 15, noNaN: true });
const percent = fc.double({ min: 1, max: 100, noNaN: true });
const form = fc.constantFrom(...DECHLORINATORS);
const reaction = fc.constantFrom(...THIOSULFATE_REACTIONS);
const base = (rise: number, volumeM3: number) => ({ volumeM3, presentMgPerL: 40, targetMgPerL: 40 + rise, activePercent: 100, mostPerDayMgPerL: 25 });

test('doses grow with the water: twice the volume takes twice the product', () => {
  fc.assert(
    fc.property(volume, mgPerL, percent, form, reaction, (volumeM3, concentration, activePercent, substance, ends) => {
      const chlorine = (addedVolumeM3: number) => dechlorination({ addedVolumeM3, chlorineMgPerL: concentration, chloramine: false, form: substance, reaction: ends, activePercent }).doseGrams;
      expect(chlorine(2 * volumeM3) / chlorine(volumeM3)).toBeCloseTo(2, 9);
      expect(concentrationDose(2 * volumeM3, concentration, activePercent).doseGrams / concentrationDose(volumeM3, concentration, activePercent).doseGrams).toBeCloseTo(2, 9);
      expect(saltDose(2 * volumeM3, 0, concentration).doseGrams / saltDose(volumeM3, 0, concentration).doseGrams).toBeCloseTo(2, 9);
    }),
  );
});

test('doses of a part of the water sum to the dose of the whole', () => {
  fc.assert(
    fc.property(volume, volume, mgPerL, percent, (one, other, concentration, activePercent) => {
      const dose = (volumeM3: number) => concentrationDose(volumeM3, concentration, activePercent).doseGrams;
      expect((dose(one) + dose(other)) / dose(one + other)).toBeCloseTo(1, 9);
    }),
  );
});

test('salt in two steps is the salt of one', () => {
  fc.assert(
    fc.property(volume, fc.double({ min: 0.1, max: 10, noNaN: true }), fc.double({ min: 0.1, max: 10, noNaN: true }), (volumeM3, first, second) => {
      const steps = saltDose(volumeM3, 0, first).doseGrams + saltDose(volumeM3, first, first + second).doseGrams;
      expect(steps / saltDose(volumeM3, 0, first + second).doseGrams).toBeCloseTo(1, 9);
    }),
  );
});

test('the volume comes back from the salt that was dosed, and lies between its least and most', () => {
  fc.assert(
    fc.property(volume, fc.double({ min: 0.5, max: 5, noNaN: true }), fc.double({ min: 0.01, max: 0.4, noNaN: true }), (volumeM3, rise, error) => {
      const found = volumeFromSalt(saltDose(volumeM3, 0.2, 0.2 + rise).doseGrams / 1000, 0.2, 0.2 + rise, error);
      expect(found.volumeM3 / volumeM3).toBeCloseTo(1, 9);
      expect(found.leastM3).toBeLessThan(found.volumeM3);
      expect(found.mostM3 ?? 0).toBeGreaterThan(found.volumeM3);
    }),
  );
});

test('no day of an alkalinity dose changes more than it may', () => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 500, noNaN: true }), fc.constantFrom(...(Object.keys(ALKALINITY_FORMS) as AlkalinityForm[])), (rise, substance) => {
      const { days, doseGrams, ratio } = alkalinityDose({ ...base(rise, 10), form: substance });
      expect(doseGrams / ratio / 10 / days).toBeLessThanOrEqual(25 + 1e-9);
    }),
  );
});

test('a reading no better than its rise has no upper bound, and says so', () => {
  const found = volumeFromSalt(5, 0, 0.1, 0.1);
  expect(found.mostM3).toBeNull();
  expect(found.warnings.join()).toContain('finer meter');
});

test('refuse what no dose can reach, with the place', () => {
  expect(refusals(() => saltDose(1, 2, 2))).toEqual(['/targetPpt']);
  expect(refusals(() => volumeFromSalt(1, 1, 0.5, 0.1))).toEqual(['/afterPpt']);
  expect(refusals(() => alkalinityDose({ ...base(-1, 1), form: 'sodium-bicarbonate' }))).toEqual(['/targetMgPerL']);
  expect(refusals(() => concentrationDose(0, 1, 100))).toEqual(['/volume']);
  expect(refusals(() => concentrationDose(1, 1, 0))).toEqual(['/activePercent']);
  expect(refusals(() => dechlorination({ addedVolumeM3: 1, chlorineMgPerL: 0, chloramine: false, form: 'ascorbic-acid', reaction: 'sulfate', activePercent: 100 }))).toEqual(['/chlorineMgPerL']);
});

test('strong salt warns for plants, then for fish, and always of where the water goes', () => {
  const says = (ppt: number) => saltDose(1, 0, ppt).warnings.join();
  expect(says(1)).not.toContain('plants suffer');
  expect(says(3)).toContain('plants suffer');
  expect(says(3)).not.toContain('bath for a short time');
  expect(says(6)).toContain('bath for a short time');
  expect(says(1)).toContain('storm drain');
});

test('soda ash carries another caution than bicarbonate', () => {
  const says = (substance: AlkalinityForm) => alkalinityDose({ ...base(10, 1), form: substance }).warnings.join();
  expect(says('sodium-carbonate')).toContain('burns eyes');
  expect(says('sodium-bicarbonate')).toContain('8.3');
});
