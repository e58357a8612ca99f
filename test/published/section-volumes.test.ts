/**
 * Volumes from areas one after another. V: 12 and 20 m2 ten meters apart are 160 m3 by end areas (a public course file); US Navy
 * NAVEDTRA 14080, ch. 4: yd3 = (A1 + A2) × 1.85 × distance / 100 ft, whose 1.85 is 100/54 rounded, 0.1 % low; the odd number of
 * contours for the prismoidal rule (a reservoir-capacity note). M: the excavated pond of USDA NRCS Agriculture Handbook 590, its
 * arithmetic D. All other values D, by elementary geometry.
 */
import fc from 'fast-check';
import { DomainError } from '../../src/domain/errors.js';
import { convert, type Unit } from '../../src/domain/quantity/index.js';
import { sectionVolume, type Section } from '../../src/domain/trade/sections/index.js';
import { refusals } from '../domain/support.js';

const feet = (sections: readonly (readonly [at: number, area: number])[]): Section[] => sections.map(([at, area]) => ({ atM: convert(at, 'ft', 'm'), areaM2: convert(area, 'ft2', 'm2') }));
const every = (interval: number, areas: readonly number[]): Section[] => feet(areas.map((area, i) => [i * interval, area]));
const inUnit = (m3: number | null, unit: Unit): number => convert(m3 ?? NaN, 'm3', unit);

it('V: 12 and 20 m2 ten meters apart are 160 m3 by end areas', () => {
  expect(sectionVolume([{ atM: 0, areaM2: 12 }, { atM: 10, areaM2: 20 }]).endAreaM3).toBeCloseTo(160, 9);
});

it('V: 300 and 400 ft2 that lie 250 ft apart are 3,237.5 yd3 by the manual within its rounding, 3,240.74 exactly', () => {
  const yards = inUnit(sectionVolume(every(250, [300, 400])).endAreaM3, 'yd3');
  expect(Math.abs(yards / 3237.5 - 1)).toBeLessThan(0.0011);
  expect(yards).toBeCloseTo(3240.74, 2);
});

it('D: contours of 300, 240, 170 and 90 ft2 a foot apart hold 605 ft3 by end areas and 601.337 by frusta', () => {
  const { endAreaM3, frustumM3, prismoidalM3, warnings } = sectionVolume(every(1, [300, 240, 170, 90]));
  expect(inUnit(endAreaM3, 'ft3')).toBeCloseTo(605, 9);
  expect(inUnit(frustumM3, 'ft3')).toBeCloseTo(601.337, 3);
  expect(prismoidalM3).toBeNull();
  expect(warnings).toEqual([]);
});

it('D: a paraboloid of 10 ft and a depth of 3 ft is exact by end areas, 4.7 % short by frusta', () => {
  const areas = [0, 1, 2, 3].map((depth) => Math.PI * 100 * (1 - depth / 3));
  const { endAreaM3, frustumM3 } = sectionVolume(every(1, areas.with(3, 0)));
  expect(inUnit(endAreaM3, 'ft3')).toBeCloseTo(471.2389, 4);
  expect(inUnit(frustumM3, 'ft3')).toBeCloseTo(449.028, 4);
});

it('D: a pyramid of 30 ft2 that closes over 10 ft is 100 ft3 by frusta, and 150 by end areas, which is said', () => {
  const { endAreaM3, frustumM3, warnings } = sectionVolume(every(10, [30, 0]));
  expect(inUnit(frustumM3, 'ft3')).toBeCloseTo(100, 9);
  expect(inUnit(endAreaM3, 'ft3')).toBeCloseTo(150, 9);
  expect(warnings).toEqual([expect.stringContaining('differ by 33 %'), expect.stringContaining('closes to nothing'), expect.stringContaining('two areas alone')]);
});

it('M: the excavated pond of Handbook 590, 12 ft deep, holds 3,996 yd3 by the prismoidal formula', () => {
  const { prismoidalM3 } = sectionVolume(every(6, [88 * 172, 64 * 136, 40 * 100]));
  expect(inUnit(prismoidalM3, 'yd3')).toBeCloseTo(3996.444, 3);
  expect(inUnit(prismoidalM3, 'gal')).toBeCloseTo(807_178, -1);
});

it('D: a garden pond of 16 × 11 ft with sides of 0.5:1, 2.5 ft deep, holds 2,699.2 gal', () => {
  const { prismoidalM3 } = sectionVolume(every(1.25, [176, 14.75 * 9.75, 13.5 * 8.5]));
  expect(inUnit(prismoidalM3, 'ft3')).toBeCloseTo(360.833, 3);
  expect(inUnit(prismoidalM3, 'yd3')).toBeCloseTo(13.364, 3);
  expect(inUnit(prismoidalM3, 'gal')).toBeCloseTo(2699.2, 1);
});

it('D: the prismoidal formula is exact for a cone, a paraboloid and a wedge, and needs sections evenly apart', () => {
  const [cone, bowl, wedge] = [[9, 2.25, 0], [8, 4, 0], [10, 5, 0]].map((areas) => inUnit(sectionVolume(every(1, areas)).prismoidalM3, 'ft3'));
  expect(cone).toBeCloseTo((9 * 2) / 3, 9);
  expect(bowl).toBeCloseTo((8 * 2) / 2, 9);
  expect(wedge).toBeCloseTo((10 * 2) / 2, 9);
  expect(sectionVolume(feet([[0, 9], [0.9, 4], [2, 1]])).prismoidalM3).toBeNull();
});

it('law: grows in proportion to areas and to distances, and is the same from either end', () => {
  const section = fc.record({ gap: fc.double({ min: 0.1, max: 5, noNaN: true }), areaM2: fc.double({ min: 0.1, max: 100, noNaN: true }) });
  const sections = fc.array(section, { minLength: 2, maxLength: 9 }).map((list) => list.map(({ areaM2 }, i): Section => ({ atM: list.slice(0, i).reduce((sum, { gap }) => sum + gap, 0), areaM2 })));
  fc.assert(
    fc.property(sections, fc.double({ min: 0.5, max: 20, noNaN: true }), (list, factor) => {
      const [one, larger] = [sectionVolume(list), sectionVolume(list.map(({ atM, areaM2 }) => ({ atM: atM * 2, areaM2: areaM2 * factor })))];
      const end = list.at(-1)?.atM ?? 0;
      const turned = sectionVolume(list.map(({ atM, areaM2 }) => ({ atM: end - atM, areaM2 })).reverse());
      for (const name of ['endAreaM3', 'frustumM3'] as const) {
        expect(larger[name] / one[name] / (2 * factor)).toBeCloseTo(1, 9);
        expect(turned[name] / one[name]).toBeCloseTo(1, 9);
      }
      // The frustum's middle term is the lesser mean of two areas.
      expect(one.frustumM3).toBeLessThanOrEqual(one.endAreaM3 * (1 + 1e-12));
    }),
  );
});

it('refuses sections that are out of order, areas below 0, and nothing at all', () => {
  expect(refusals(() => sectionVolume(feet([[0, 9], [2, 4], [2, -1]])))).toEqual(['/2/at', '/2/area']);
  expect(() => sectionVolume(feet([[0, 9]]))).toThrow(DomainError);
  expect(() => sectionVolume(feet([[0, 0], [1, 0]]))).toThrow('more than 0');
});
