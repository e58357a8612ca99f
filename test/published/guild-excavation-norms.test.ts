/**
 * Guild of Project Controls compendium, "Excavate & reduce levels": m3 per hour of hand digging in small pits, in trenches
 * up to 1.5 m deep, and of hand transport of spoil (V). Radford 1913, p. 129: 1 yd3 of loam shovelled per person-hour (V).
 * The digging is taken as published; the barrow's cycle is our own model with common practice in it, and has to come within
 * 15 % of the transport rows at the middle of their distances.
 */
import { convert } from '../../src/domain/quantity/index.js';
import { excavatorLooseM3PerH, HAND_DIGGINGS, haulCycle, SANITY_BAND, type HaulInput } from '../../src/domain/trade/haul/index.js';

const YD3 = convert(1, 'yd3', 'm3');
const haul = (change: Partial<HaulInput>) =>
  haulCycle({ carrier: 'barrow', distanceM: 15, slopePercent: 0, gateM: null, digging: null, densityKgPerM3: 1250, bulkingPercent: 0, efficiency: 0.75, holdsM3: null, payloadKg: null, speedMPerS: null, ...change });

it.each([['loose', 1.53], ['firm', 1.78], ['gravel', 2.25], ['clay', 2.18], ['boulder-clay', 2.73]] as const)('digging %s by hand takes %d h/yd3', (digging, hours) => {
  expect(haul({ digging }).diggingHPerM3 * YD3).toBeCloseTo(hours, 2);
});

it.each([['trench-loose', 1.16], ['trench-firm', 1.34], ['trench-clay', 1.66], ['trench-boulder-clay', 2.01]] as const)('digging a %s by hand takes %d h/yd3', (digging, hours) => {
  expect(haul({ digging }).diggingHPerM3 * YD3).toBeCloseTo(hours, 2);
});

it('digging a loose trench and hauling up to 10 m takes about 1.28 h/yd3 (D: the sum of two rows)', () => {
  expect(Math.abs((haul({ digging: 'trench-loose', distanceM: 5 }).hoursPerM3 * YD3) / 1.28 - 1)).toBeLessThan(0.02);
});

it('no norm digs faster than loam is shovelled, 1 yd3 per person-hour, which is where the sanity band begins', () => {
  for (const digging of HAND_DIGGINGS) expect(haul({ digging }).diggingHPerM3 * YD3).toBeGreaterThan(SANITY_BAND.doubtBelow);
});

it.each([[5, 0.12], [15, 0.24], [35, 0.36]])('transport by hand over %d m takes about %d h/yd3', (distanceM, hours) => {
  expect(Math.abs((haul({ distanceM }).haulingHPerM3 * YD3) / hours - 1)).toBeLessThan(0.15);
});

it.each([['loose', 1.89], ['clay', 2.54], ['boulder-clay', 3.09]] as const)('digging %s and hauling over 20 to 50 m takes about %d h/yd3 (D: the sum of two rows)', (digging, hours) => {
  expect(Math.abs((haul({ digging, distanceM: 35 }).hoursPerM3 * YD3) / hours - 1)).toBeLessThan(0.02);
});

describe('excavator output, 3600 × bucket × fill × efficiency / cycle', () => {
  it.each([[1.2, 0.9, 0.83, 30, 107.57, 'V'], [0.1, 0.9, 0.75, 25, 9.72, 'D'], [0.05, 0.9, 0.7, 20, 5.67, 'D']])('a bucket of %d at %d, %d and %d s moves %d an hour (%s)', (bucketM3, fill, efficiency, cycleS, output) => {
    expect(excavatorLooseM3PerH({ bucketM3, fill, efficiency, cycleS })).toBeCloseTo(output, 2);
  });
});
