/**
 * Rock and gravel. USACE streambank protection manual, Appendix A, A.2.3 (rock 150 to 170 lb/ft3, V); a water-treatment
 * textbook table of bulk materials (gravel 105 lb/ft3 dry, V); void fraction 0.4 of clean angular stone from a
 * low-impact-development wiki (V). A layer is no thinner than its largest stone: EM 1110-2-1601, 1 July 1970 (V). The products below are D: derived from these by definition.
 */
import { convert } from '../../src/domain/quantity/index.js';
import { gravelBed, netWater, stoneEdge } from '../../src/domain/trade/stone/index.js';

const perFt3 = (pounds: number): number => convert(pounds, 'lb', 'kg') / convert(1, 'ft3', 'm3');
const ft = (value: number): number => convert(value, 'ft', 'm');
const tons = (kg: number): number => convert(kg, 'kg', 'ton');

it.each([[165, 0.35, 1.448], [165, 0.4, 1.337], [155, 0.33, 1.402]])('a cubic yard at %d lb/ft3 and a void fraction of %d weighs %d tons (D)', (density, voidFraction, expected) => {
  const { massKg } = stoneEdge({ lengthM: ft(3), heightM: ft(3), thicknessM: ft(3), densityKgPerM3: perFt3(density), voidFraction, reclaimedKg: 0 });
  expect(tons(massKg)).toBeCloseTo(expected, 3);
});

it.each([[1, 1, 0.0578], [40, 1, 2.31], [1, 1.5, 0.0866]])('an edge %d ft long, %d ft high and 1 ft thick takes %d tons (D)', (length, height, expected) => {
  const { massKg } = stoneEdge({ lengthM: ft(length), heightM: ft(height), thicknessM: ft(1), densityKgPerM3: perFt3(165), voidFraction: 0.3, reclaimedKg: 0 });
  expect(Math.abs(tons(massKg) / expected - 1)).toBeLessThan(1e-3);
});

it('100 ft2 of gravel 3 in deep are 0.926 yd3 and 1.30 tons (D)', () => {
  const bed = gravelBed({ areaM2: convert(100, 'ft2', 'm2'), depthM: convert(3, 'in', 'm'), bulkDensityKgPerM3: perFt3(104), voidFraction: 0.4, largestStoneM: null, reclaimedKg: 0 });
  expect(convert(bed.bulkVolumeM3, 'm3', 'yd3')).toBeCloseTo(0.926, 3);
  expect(tons(bed.massKg)).toBeCloseTo(1.3, 2);
});

it('10 ft3 of gravel with 0.4 of voids hold 29.9 gal and displace the rest (D)', () => {
  const bed = gravelBed({ areaM2: convert(10, 'ft2', 'm2'), depthM: ft(1), bulkDensityKgPerM3: perFt3(105), voidFraction: 0.4, largestStoneM: null, reclaimedKg: 0 });
  expect(convert(bed.waterHeldM3, 'm3', 'gal')).toBeCloseTo(29.9, 1);
  const water = netWater(convert(1000, 'gal', 'm3'), [{ kind: 'gravel', bulkVolumeM3: bed.bulkVolumeM3, voidFraction: 0.4, submergedPercent: 100 }]);
  expect(convert(water.netM3, 'm3', 'gal')).toBeCloseTo(1000 - 0.6 * 74.80519, 3);
});

it.each([[3, 0], [3.01, 1]])('V: a layer 3 in deep with stones up to %d in gets %d warnings', (inches, count) => {
  const bed = gravelBed({ areaM2: 10, depthM: convert(3, 'in', 'm'), bulkDensityKgPerM3: perFt3(105), voidFraction: 0.4, largestStoneM: convert(inches, 'in', 'm'), reclaimedKg: 0 });
  expect(bed.warnings.filter((warning) => warning.includes('thinner than its largest stone'))).toHaveLength(count);
});

it('V: a void fraction of 0.4 passes, and the void ratio e = n / (1 - n) = 0.667 of the same stone is caught', () => {
  const warned = (voidFraction: number): number => stoneEdge({ lengthM: 1, heightM: 0.3, thicknessM: 0.3, densityKgPerM3: perFt3(165), voidFraction, reclaimedKg: 0 }).warnings.length;
  expect([0.4, 0.4 / 0.6].map(warned)).toEqual([0, 1]);
});
