/**
 * Phase relations of saturated soil, as in any soil-mechanics text (M); the values D, with water at 62.4 lb/ft3 and
 * solids of 2.65. Organic mud: Håkanson & Jansson, Principles of Lake Sedimentology, 1983, 4.1.3 (formula M, values D).
 */
import { convert } from '../../src/domain/quantity/index.js';
import { organicMudDensity, saturatedDensity, sedimentStages, WATER_KG_PER_M3 } from '../../src/domain/trade/sediment/index.js';

it.each([[50, 106.7, 1709, 1.44], [100, 90.6, 1451, 1.223], [150, 83.1, 1331, 1.122], [200, 78.7, 1261, 1.063], [300, 73.9, 1184, 0.998], [500, 69.6, 1115, 0.94]])(
  'sediment of %d %% water weighs %d lb/ft3, %d kg/m3, %d tons/yd3',
  (water, poundsPerFt3, kgPerM3, tonsPerYd3) => {
    const { wetKgPerM3 } = saturatedDensity(water, 2.65);
    expect(convert(wetKgPerM3 * convert(1, 'ft3', 'm3'), 'kg', 'lb')).toBeCloseTo(poundsPerFt3, 1);
    expect(Math.abs(wetKgPerM3 - kgPerM3)).toBeLessThan(1);
    expect(convert(wetKgPerM3 * convert(1, 'yd3', 'm3'), 'kg', 'ton')).toBeCloseTo(tonsPerYd3, 3);
  },
);

it.each([[50, 2, 1.419], [70, 5, 1.182], [85, 5, 1.066], [90, 3, 1.045]])('organic mud of %d %% water and %d %% loss on ignition has %d times the density of water', (water, ignition, ratio) => {
  expect(Math.abs(organicMudDensity(water, ignition) / WATER_KG_PER_M3 - ratio)).toBeLessThan(0.002);
});

it.each([[200, 60, 0.411, 0.533], [300, 100, 0.408, undefined]])('draining from %d to %d %% leaves %d of the volume', (before, after, volume, weight) => {
  const { inPlace, drained } = sedimentStages({ inPlaceM3: 10, waterPercent: before, drainedWaterPercent: after, gravity: 2.65, bulkingPercent: 25 });
  expect((drained?.volumeM3 ?? NaN) / inPlace.volumeM3).toBeCloseTo(volume, 3);
  if (weight !== undefined) expect((drained?.weightKg ?? NaN) / inPlace.weightKg).toBeCloseTo(weight, 3);
});
