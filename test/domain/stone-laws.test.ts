import fc from 'fast-check';
import { gravelBed, netWater, reclaimedStone, stoneEdge, type Fill } from '../../src/domain/trade/stone/index.js';
import { refusals } from './support.js';

const size = fc.double({ min: 0.05, max: 5, noNaN: true });
const share = fc.double({ min: 0, max: 0.89, noNaN: true });
const mass = fc.double({ min: 0, max: 50_000, noNaN: true });
const edge = { lengthM: 12, heightM: 0.3, thicknessM: 0.3, densityKgPerM3: 2643, voidFraction: 0.3, reclaimedKg: 0 };

test('needed stone is reused or bought, and reclaimed stone is reused or left over', () => {
  fc.assert(
    fc.property(size, size, share, mass, (lengthM, heightM, voidFraction, reclaimedKg) => {
      const { massKg, reusedKg, toBuyKg, leftOverKg } = stoneEdge({ ...edge, lengthM, heightM, voidFraction, reclaimedKg });
      expect(reusedKg + toBuyKg).toBeCloseTo(massKg, 6);
      expect(reusedKg + leftOverKg).toBeCloseTo(reclaimedKg, 6);
      expect(Math.min(toBuyKg, leftOverKg)).toBe(0);
    }),
  );
});

test('an edge cut in two takes as much stone as the whole', () => {
  fc.assert(
    fc.property(size, size, (a, b) => {
      const of = (lengthM: number): number => stoneEdge({ ...edge, lengthM }).massKg;
      expect(of(a) + of(b)).toBeCloseTo(of(a + b), 6);
    }),
  );
});

test('voids and grains of gravel make up its volume', () => {
  fc.assert(
    fc.property(size, size, share, (areaM2, depthM, voidFraction) => {
      const bed = gravelBed({ areaM2, depthM, voidFraction, bulkDensityKgPerM3: 1682, largestStoneM: null, reclaimedKg: 0 });
      expect(bed.waterHeldM3 + bed.waterDisplacedM3).toBeCloseTo(bed.bulkVolumeM3, 9);
    }),
  );
});

test('displaced and net water make up the gross volume, whatever the order of the fills', () => {
  const fill = fc.oneof(
    fc.record({ kind: fc.constant('stone' as const), massKg: mass, densityKgPerM3: fc.constant(2643), submergedPercent: fc.integer({ min: 0, max: 100 }) }),
    fc.record({ kind: fc.constant('gravel' as const), bulkVolumeM3: size, voidFraction: share, submergedPercent: fc.integer({ min: 0, max: 100 }) }),
  );
  fc.assert(
    fc.property(fc.array(fill, { maxLength: 8 }), (fills: Fill[]) => {
      const { displacedM3, netM3 } = netWater(1000, fills);
      expect(displacedM3 + netM3).toBeCloseTo(1000, 9);
      expect(netWater(1000, [...fills].reverse()).netM3).toBeCloseTo(netM3, 9);
    }),
  );
});

test('stones counted one by one weigh what they weigh as a pile', () => {
  fc.assert(
    fc.property(size, size, size, fc.integer({ min: 1, max: 20 }), (a, b, c, count) => {
      const pile = { dimensionsM: [a, b, c] as const, form: 'rounded' as const };
      const one = Array.from({ length: count }, () => ({ ...pile, count: 1 }));
      expect(reclaimedStone(one, 2643, 0).massKg / reclaimedStone([{ ...pile, count }], 2643, 0).massKg).toBeCloseTo(1, 12);
    }),
  );
});

test('warns of a retaining wall, of a void ratio given for a fraction, and of a layer thinner than its stones', () => {
  expect(stoneEdge({ ...edge, heightM: 0.91 }).warnings).toEqual([]);
  expect(stoneEdge({ ...edge, heightM: 0.92 }).warnings[0]).toMatch(/retaining wall/);
  expect(stoneEdge({ ...edge, voidFraction: 0.667 }).warnings[0]).toMatch(/void ratio/);
  const bed = { areaM2: 9, depthM: 0.05, bulkDensityKgPerM3: 1682, voidFraction: 0.4, largestStoneM: 0.08, reclaimedKg: 0 };
  expect(gravelBed(bed).warnings[0]).toMatch(/thinner than its largest stone/);
  expect(gravelBed({ ...bed, largestStoneM: 0.03, bulkDensityKgPerM3: 2600 }).warnings[0]).toMatch(/unlike rock/);
});

test('refuses what can not be built, at its place', () => {
  expect(refusals(() => stoneEdge({ ...edge, lengthM: 0, heightM: -1 }))).toEqual(['/length', '/height']);
  expect(refusals(() => stoneEdge({ ...edge, voidFraction: 1 }))).toEqual(['/voidFraction']);
  expect(refusals(() => netWater(1, [{ kind: 'stone', massKg: 2643, densityKgPerM3: 2643, submergedPercent: 100 }]))).toEqual(['/waterVolume']);
});
