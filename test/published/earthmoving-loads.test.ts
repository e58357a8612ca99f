/**
 * Swell and loads. US Navy NAVEDTRA 14070, Table 10-1 lead-in (V): 100 yd3 of sand in place are 111 loose. Equipment
 * handbook example (V): 1000 in place at 20 % are 1200 loose, 1308 are 1570; 1000 loose at 25 % were 800 in place, 1308 were
 * 1046. Bulking of mechanically dredged sediment: US Army ERDC, TR DOER-1, ch. 6, 10 to 40 % (V). The loads follow by
 * arithmetic (D).
 */
import { convert } from '../../src/domain/quantity/index.js';
import { loadsOf, sedimentStages } from '../../src/domain/trade/sediment/index.js';

it.each([[100, 11, 111], [1000, 20, 1200], [1308, 20, 1570]])('%d in place at %d %% are %d dug', (bank, bulkingPercent, loose) => {
  const { dug } = sedimentStages({ inPlaceM3: bank, waterPercent: 100, drainedWaterPercent: null, gravity: 2.65, bulkingPercent });
  expect(Math.abs(dug.volumeM3 - loose)).toBeLessThan(0.5);
});

it.each([[1000, 25, 800], [1308, 25, 1046]])('V: %d loose at %d %% were %d in place', (loose, bulkingPercent, bank) => {
  const share = sedimentStages({ inPlaceM3: 1, waterPercent: 100, drainedWaterPercent: null, gravity: 2.65, bulkingPercent }).dug.volumeM3;
  expect(Math.abs(loose / share - bank)).toBeLessThan(0.5);
});

it.each([[9.9, 1], [10, 0], [40, 0], [40.1, 1]])('V: a bulking of %d %% gets %d warnings', (bulkingPercent, count) => {
  expect(sedimentStages({ inPlaceM3: 1, waterPercent: 150, drainedWaterPercent: null, gravity: 2.65, bulkingPercent }).warnings).toHaveLength(count);
});

it.each([
  [80, 20, 14.4, 12.96, 2, 2, 2],
  [108, 10, 13.2, 17.5, 2, 3, 3],
])('12 yd3 of %d lb/ft3 at %d %% are %d yd3 and %d tons: %d loads by volume, %d by weight, so %d', (density, swell, volume, weight, byVolume, byWeight, loads) => {
  const loose = 12 * (1 + swell / 100);
  const tons = (12 * 27 * density) / 2000;
  expect(loose).toBeCloseTo(volume, 9);
  expect(tons).toBeCloseTo(weight, 2);
  const result = loadsOf(convert(loose, 'yd3', 'm3'), convert(tons, 'ton', 'kg'), { boxM3: convert(10, 'yd3', 'm3'), payloadKg: convert(7, 'ton', 'kg') });
  expect(result).toMatchObject({ loads, byVolume, byWeight });
});

it('526.3 yd3 in place at 15 % fill a 7 yd3 truck 87 times (V 526, rest D)', () => {
  const loose = (500 / 0.95) * 1.15;
  expect(loose).toBeCloseTo(605.3, 1);
  expect(loadsOf(convert(loose, 'yd3', 'm3'), 0, { boxM3: convert(7, 'yd3', 'm3'), payloadKg: 1 }).loads).toBe(87);
});
