import fc from 'fast-check';
import { byHand, CARRIER_NAMES, haulCycle, SANITY_BAND, type HaulInput } from '../../src/domain/trade/haul/index.js';
import { refusals } from './support.js';

const EXCAVATOR = { bucketM3: 0.05, fill: 0.9, efficiency: 0.7, cycleS: 20 };
const input = (change: Partial<HaulInput> = {}): HaulInput => ({
  carrier: 'barrow', distanceM: 25, slopePercent: 0, gateM: null, digging: 'loose', densityKgPerM3: 1280, bulkingPercent: 25, efficiency: 0.75, holdsM3: null, payloadKg: null, speedMPerS: null, ...change,
});
const hours = (change: Partial<HaulInput>): number => haulCycle(input(change)).hoursPerM3;

test('takes longer the farther and the steeper it is, up and down alike', () => {
  fc.assert(
    fc.property(fc.constantFrom(...CARRIER_NAMES), fc.integer({ min: 1, max: 150 }), fc.integer({ min: 0, max: 20 }), (carrier, distanceM, slopePercent) => {
      expect(hours({ carrier, distanceM: distanceM + 1, slopePercent })).toBeGreaterThan(hours({ carrier, distanceM, slopePercent }));
      expect(hours({ carrier, distanceM, slopePercent: slopePercent + 1 })).toBeGreaterThan(hours({ carrier, distanceM, slopePercent }));
      expect(hours({ carrier, distanceM, slopePercent: -slopePercent })).toBe(hours({ carrier, distanceM, slopePercent }));
    }),
  );
});

test('makes up the hours of digging and hauling, and the trips of the whole', () => {
  const { cycleH, tripsPerM3, diggingHPerM3, haulingHPerM3, hoursPerM3 } = haulCycle(input());
  expect(diggingHPerM3 + haulingHPerM3).toBeCloseTo(hoursPerM3, 12);
  expect(cycleH * tripsPerM3).toBeCloseTo(haulingHPerM3, 12);
});

test('fills a load to its volume or its weight, whichever comes first', () => {
  // 1,280 kg/m3 in place is 1,024 dug: 0.085 m3 weigh 87 kg; with 2,000 in place 110 kg are 0.06875 m3.
  expect(haulCycle(input()).tripsPerM3).toBeCloseTo(1.25 / 0.085, 9);
  expect(haulCycle(input({ densityKgPerM3: 2000 })).tripsPerM3).toBeCloseTo(1.25 / 0.06875, 9);
  expect(haulCycle(input({ holdsM3: 0.05 })).tripsPerM3).toBeCloseTo(25, 9);
  expect(haulCycle(input({ payloadKg: 51.2 })).tripsPerM3).toBeCloseTo(25, 9);
});

test('lets the carrier wait while an excavator fills it', () => {
  const waiting = haulCycle(input({ carrier: 'tracked-barrow', digging: EXCAVATOR }));
  const ready = haulCycle(input({ carrier: 'tracked-barrow', digging: null }));
  expect(waiting.cycleH - ready.cycleH).toBeCloseTo(0.3 / 5.67, 9);
  expect(waiting.diggingHPerM3).toBeCloseTo(1.25 / 5.67, 9);
});

test('goes by the speed that the crew has measured', () => {
  const slow = haulCycle(input({ speedMPerS: 0.45 }));
  expect(slow.cycleH - haulCycle(input()).cycleH).toBeCloseTo(50 / 0.9 / 0.75 / 3600, 12);
});

test('names the carriers that pass the gate, and refuses the others', () => {
  expect(haulCycle(input({ gateM: 0.9 })).fitting).toEqual(['barrow', 'tracked-barrow']);
  expect(refusals(() => haulCycle(input({ gateM: 0.9, carrier: 'compact-loader' })))).toEqual(['/carrier']);
  expect(refusals(() => haulCycle(input({ gateM: 0.5 })))).toEqual(['/gateWidth']);
});

test('holds hours by hand and barrow against the band, and no others', () => {
  expect(haulCycle(input()).warnings).toEqual([]);
  expect(haulCycle(input({ speedMPerS: 0.05, digging: 'clay' })).warnings.join(' ')).toContain(`outside ${SANITY_BAND.doubtBelow} to ${SANITY_BAND.doubtAbove}`);
  expect(haulCycle(input({ speedMPerS: 0.1, digging: 'clay' })).warnings.join(' ')).toContain('outside the usual');
  expect(byHand(input({ digging: null }))).toBe(false);
  expect(byHand(input({ carrier: 'compact-loader' }))).toBe(false);
  expect(haulCycle(input({ digging: null })).warnings).toEqual([]);
});

test('warns of steep ways and of long ones by hand', () => {
  expect(haulCycle(input({ slopePercent: -15 })).warnings.join(' ')).toContain('steep');
  expect(haulCycle(input({ distanceM: 80 })).warnings.join(' ')).toContain('50 m');
  expect(haulCycle(input({ distanceM: 80, slopePercent: 15, carrier: 'tracked-barrow' })).warnings).toEqual([]);
});
