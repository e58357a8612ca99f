import { DomainError } from '../../errors.js';
import type { Working } from '../../working.js';
import { given, step } from '../working-lines.js';
import { CARRIER_NAMES, CARRIERS, type CarrierName } from './carriers.js';
import { excavatorLooseM3PerH, HAND_DIGGING_M3_PER_H } from './digging.js';
import type { HaulInput } from './haul-input.js';
import { haulWarnings } from './haul-warnings.js';

export interface HaulCycle {
  readonly cycleH: number;
  /** Trips for 1 m3 in place. */
  readonly tripsPerM3: number;
  readonly diggingHPerM3: number;
  readonly haulingHPerM3: number;
  /** Labor-hours for 1 m3 in place, digging and hauling, one person each. */
  readonly hoursPerM3: number;
  /** The carriers that pass the gate. */
  readonly fitting: readonly CarrierName[];
  readonly working: Working;
  readonly warnings: string[];
}

/**
 * Labor-hours per volume in place from the cycle of the carrier: trips × (filling + both ways + turning) / efficiency,
 * plus the digging. A trip carries what it holds or what it may weigh, whichever comes first. A carrier is filled by
 * hand in the hours of the digging, and waits while an excavator fills it.
 * @throws DomainError at /gateWidth (narrower than every carrier) or /carrier (the chosen one does not pass)
 * @see FM 5-434 for the form of cycle and bulking; the carriers' figures are common practice (see carriers.ts)
 */
export function haulCycle(input: HaulInput): HaulCycle {
  const fitting = fittingGate(input);
  const usual = CARRIERS[input.carrier];
  const holdsM3 = input.holdsM3 ?? usual.holdsM3;
  const payloadKg = input.payloadKg ?? usual.payloadKg;
  const speed = input.speedMPerS ?? usual.speedMPerS;
  const bulked = 1 + input.bulkingPercent / 100;
  const looseKgPerM3 = input.densityKgPerM3 / bulked;
  const loadM3 = Math.min(holdsM3, payloadKg / looseKgPerM3);
  const slower = 1 + usual.perSlopePercent * Math.abs(input.slopePercent);
  const waysS = (2 * input.distanceM * slower) / speed;
  const dug = digging(input.digging, bulked);
  const fillingS = dug.looseM3PerH === null ? 0 : (3600 * loadM3) / dug.looseM3PerH;
  const cycleH = (fillingS + (waysS + usual.turnS) / input.efficiency) / 3600;
  const tripsPerM3 = bulked / loadM3;
  const haulingHPerM3 = cycleH * tripsPerM3;
  const hoursPerM3 = haulingHPerM3 + dug.hoursPerM3;
  const working: Working = {
    rule: 'labor-hours for 1 m3 in place = digging + trips × (filling + (both ways + turning) / efficiency)',
    inputs: [
      given('distance, one way', input.distanceM, 'm'),
      given('slope', input.slopePercent, '%'),
      given('holds', holdsM3, 'm3', input.carrier),
      given('payload', payloadKg, 'kg', input.carrier),
      given('speed', speed, 'm/s', input.carrier),
      given('density in place', input.densityKgPerM3, 'kg/m3'),
      given('bulking', input.bulkingPercent, '% of the volume in place'),
      given('efficiency', input.efficiency, 'of an hour'),
    ],
    steps: [
      step('a load', `min of ${holdsM3} and ${payloadKg} / (${input.densityKgPerM3} / ${bulked})`, loadM3, 'm3 dug'),
      step('trips for 1 m3 in place', `${bulked} / load`, tripsPerM3, 'each'),
      step('both ways', `2 × ${input.distanceM} × (1 + ${usual.perSlopePercent} × ${Math.abs(input.slopePercent)}) / ${speed}`, waysS, 's'),
      step('filling', dug.looseM3PerH === null ? 'in the hours of the digging' : '3600 × load / loose m3 per hour of the excavator', fillingS, 's'),
      step('cycle', `(filling + (both ways + ${usual.turnS}) / ${input.efficiency}) / 3600`, cycleH, 'h'),
      step('hauling', 'cycle × trips', haulingHPerM3, 'h/m3'),
      step('digging', dug.expression, dug.hoursPerM3, 'h/m3'),
      step('labor-hours', 'hauling + digging', hoursPerM3, 'h/m3'),
    ],
  };
  return { cycleH, tripsPerM3, diggingHPerM3: dug.hoursPerM3, haulingHPerM3, hoursPerM3, fitting, working, warnings: haulWarnings(input, hoursPerM3) };
}

function fittingGate({ gateM, carrier }: HaulInput): CarrierName[] {
  const fitting = CARRIER_NAMES.filter((name) => gateM === null || CARRIERS[name].gateM <= gateM);
  if (fitting.length === 0) {
    throw DomainError.at('/gateWidth', 'No carrier passes so narrow a gate (a barrow wants 0.7 m, 28 in): open the fence, or carry or pump it out and price that by hand.');
  }
  if (fitting.includes(carrier)) return fitting;
  throw DomainError.at('/carrier', `A ${carrier} wants a gate of ${CARRIERS[carrier].gateM} m; these pass: ${fitting.join(', ')}.`);
}

function digging(by: HaulInput['digging'], bulked: number): { hoursPerM3: number; looseM3PerH: number | null; expression: string } {
  if (by === null) return { hoursPerM3: 0, looseM3PerH: null, expression: 'lies ready' };
  if (typeof by === 'string') return { hoursPerM3: 1 / HAND_DIGGING_M3_PER_H[by], looseM3PerH: null, expression: `1 / ${HAND_DIGGING_M3_PER_H[by]} m3 per hour, ${by}, by hand` };
  const looseM3PerH = excavatorLooseM3PerH(by);
  return { hoursPerM3: bulked / looseM3PerH, looseM3PerH, expression: `${bulked} × ${by.cycleS} / (3600 × ${by.bucketM3} × ${by.fill} × ${by.efficiency})` };
}
