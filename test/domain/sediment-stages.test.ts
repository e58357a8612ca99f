import fc from 'fast-check';
import { loadsOf, organicMudDensity, sedimentStages, WATER_KG_PER_M3 } from '../../src/domain/trade/sediment/index.js';
import { refusals } from './support.js';

const volume = fc.double({ min: 0.01, max: 1000, noNaN: true });
const stages = (inPlaceM3: number, waterPercent: number, drainedWaterPercent: number | null, bulkingPercent = 25) =>
  sedimentStages({ inPlaceM3, waterPercent, drainedWaterPercent, gravity: 2.65, bulkingPercent });

test('loses in draining exactly the water that runs off, and keeps the solids', () => {
  fc.assert(
    fc.property(volume, fc.integer({ min: 40, max: 500 }), fc.integer({ min: 0, max: 300 }), (inPlaceM3, after, more) => {
      const { inPlace, drained } = stages(inPlaceM3, after + more, after);
      const water = inPlace.weightKg - (drained?.weightKg ?? NaN);
      expect(water).toBeCloseTo((inPlace.volumeM3 - (drained?.volumeM3 ?? NaN)) * WATER_KG_PER_M3, 4);
      expect(inPlace.weightKg / (1 + (after + more) / 100)).toBeCloseTo((drained?.weightKg ?? NaN) / (1 + after / 100), 6);
    }),
  );
});

test('keeps the weight and enlarges the volume when dug', () => {
  fc.assert(
    fc.property(volume, fc.integer({ min: 0, max: 60 }), (inPlaceM3, bulking) => {
      const { inPlace, dug } = stages(inPlaceM3, 150, null, bulking);
      expect(dug.weightKg).toBe(inPlace.weightKg);
      expect(dug.volumeM3 / inPlace.volumeM3).toBeCloseTo(1 + bulking / 100, 12);
    }),
  );
});

test('never loads more than fits, and needs every load', () => {
  fc.assert(
    fc.property(volume, volume, volume, volume, (volumeM3, weightKg, boxM3, payloadKg) => {
      const { loads, perLoadM3, perLoadKg } = loadsOf(volumeM3, weightKg, { boxM3, payloadKg });
      expect(loads * boxM3).toBeGreaterThan(volumeM3 * (1 - 1e-8));
      expect(loads * payloadKg).toBeGreaterThan(weightKg * (1 - 1e-8));
      expect((loads - 1) * perLoadM3).toBeLessThan(volumeM3);
      expect(perLoadM3).toBeLessThan(boxM3 * (1 + 1e-12));
      expect(perLoadKg).toBeLessThan(payloadKg * (1 + 1e-12));
    }),
  );
});

test('needs no load for nothing, and no extra one for rounding', () => {
  expect(loadsOf(0, 0, { boxM3: 5, payloadKg: 5000 }).loads).toBe(0);
  expect(loadsOf(0.1 + 0.2, 0, { boxM3: 0.3, payloadKg: 5000 })).toMatchObject({ loads: 1, limitedBy: 'volume' });
});

test('warns of unusual bulking and water, and of sediment so dry that it cracks', () => {
  expect(stages(1, 150, 60).warnings).toEqual([]);
  expect(stages(1, 150, 30, 60).warnings.join(' ')).toMatch(/10 to 40 %.*lower bound/);
  expect(stages(1, 800, null).warnings.join(' ')).toContain('50 to 500 %');
});

test('refuses contents that cannot be, with the field', () => {
  expect(refusals(() => stages(1, 0, null))).toEqual(['/waterPercent']);
  expect(refusals(() => stages(1, 100, 150))).toEqual(['/drainedWaterPercent']);
  expect(refusals(() => organicMudDensity(90, 20))).toEqual(['/ignitionPercentOfWet']);
  expect(refusals(() => loadsOf(1, 1, { boxM3: 0, payloadKg: 1 }))).toEqual(['/boxVolume']);
  expect(refusals(() => loadsOf(1, 1, { boxM3: 1, payloadKg: 0 }))).toEqual(['/payload']);
});
