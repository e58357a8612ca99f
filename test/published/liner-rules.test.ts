/**
 * Size of a liner. The rule span + 2 × depth + 2 × overlap is common practice (C), no public standard has it; developed lengths are
 * D: derived by definition. Thickness: NRCS practice standard 521A, Flexible Membrane (national draft), Table 1 (V); EPDM 45 mil (M). Side
 * slopes: NRCS Arizona specification 521A (January 2008), no steeper than 1:1 where the membrane is exposed (V).
 */
import { convert, fromSi } from '../../src/domain/quantity/index.js';
import { linerSheet, thicknessWarnings, type ProfileStep } from '../../src/domain/trade/liner/index.js';

const ft = (value: number): number => convert(value, 'ft', 'm');
const inFeet = (metres: number): number => fromSi(metres, 'ft');
const wall: ProfileStep = { dropM: ft(2.5), runM: 0 };

it('16 × 11 × 2.5 ft with 1 ft past the edge takes 23 × 18 ft = 414 ft2 (C)', () => {
  const sheet = linerSheet(ft(16), ft(11), [wall], ft(1));
  expect([inFeet(sheet.lengthM), inFeet(sheet.widthM), fromSi(sheet.areaM2, 'ft2')].map((value) => Number(value.toFixed(6)))).toEqual([23, 18, 414]);
});

it('three shelves of 10 in, the last drop to the floor, take the same sheet (D)', () => {
  const tenInches = convert(10, 'in', 'm');
  const shelves = [{ dropM: tenInches, runM: 0 }, { dropM: 0, runM: ft(1) }, { dropM: tenInches, runM: 0 }, { dropM: 0, runM: ft(1) }, { dropM: tenInches, runM: 0 }];
  const sheet = linerSheet(ft(16), ft(11), shelves, ft(1));
  expect(inFeet(sheet.lengthM)).toBeCloseTo(23, 9);
  expect(inFeet(sheet.widthM)).toBeCloseTo(18, 9);
});

it('sides of 0.5:1 take 21.090 ft of length, 8.3 % less than the rule (D)', () => {
  const sheet = linerSheet(ft(16), ft(11), [{ dropM: ft(2.5), runM: ft(1.25) }], ft(1));
  expect(inFeet(sheet.lengthM)).toBeCloseTo(21.09, 3);
  expect(inFeet(sheet.ruleLengthM)).toBeCloseTo(23, 9);
  expect(1 - sheet.lengthM / sheet.ruleLengthM).toBeCloseTo(0.083, 3);
});

it('5 × 3.5 × 0.8 m with 0.5 m past the edge takes 7.6 × 6.1 m = 46.36 m2 (C)', () => {
  const sheet = linerSheet(5, 3.5, [{ dropM: 0.8, runM: 0 }], 0.5);
  expect([sheet.lengthM, sheet.widthM, sheet.areaM2].map((value) => Number(value.toFixed(9)))).toEqual([7.6, 6.1, 46.36]);
});

it('V: warns of sides steeper than 1:1 and not of sides of 1:1', () => {
  const warned = (runM: number): boolean => linerSheet(ft(16), ft(11), [{ dropM: ft(2.5), runM }], ft(1)).warnings.some((warning) => warning.includes('521A'));
  expect([ft(2.5), ft(2.4)].map(warned)).toEqual([false, true]);
});

it.each([['hdpe', 30], ['lldpe', 20], ['pvc', 20], ['epdm', 45]] as const)('warns of %s below %d mil, and says nothing from there on', (material, mil) => {
  expect(thicknessWarnings(material, mil)).toEqual([]);
  expect(thicknessWarnings(material, mil - 1)).toHaveLength(1);
});
