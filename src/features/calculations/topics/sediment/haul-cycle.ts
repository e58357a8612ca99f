import { decimal } from '../../../../domain/decimal.js';
import { DomainError } from '../../../../domain/errors.js';
import { convert, toSi } from '../../../../domain/quantity/index.js';
import { byHand, haulCycle, SANITY_BAND, type Excavator, type HaulInput } from '../../../../domain/trade/haul/index.js';
import { calculation } from '../../calculation.js';
import { HaulCycleBody, HaulCycleView, type ExcavatorBody } from './haul-cycle.dto.js';

export const HAUL_CYCLE = calculation({
  name: 'haul-cycle',
  title: 'Labor-hours to dig and haul sediment',
  description: 'Digging plus trips × (filling + both ways + turning) / efficiency, for one person each, as an alternative to a labor rule\'s flat rate. Hand digging as published (Guild of Project Controls compendium, small pits); the barrow comes within 15 percent of its hand transport up to 50 m; slopes, gates and machines are common practice. Your own figures are better: enter them.',
  input: HaulCycleBody,
  output: HaulCycleView,
  run: haulHours,
});

/** @throws DomainError at /gateWidth, /carrier or /excavator */
export function haulHours(body: HaulCycleBody): HaulCycleView {
  const input = inputOf(body);
  const { cycleH, tripsPerM3, diggingHPerM3, haulingHPerM3, hoursPerM3, fitting, working, warnings } = haulCycle(input);
  const yd3 = convert(1, 'yd3', 'm3');
  const hoursPerYd3 = hoursPerM3 * yd3;
  const last = { label: 'labor-hours for 1 yd3', expression: `labor-hours × ${yd3}`, value: decimal(hoursPerYd3).toFixed(), unit: 'h/yd3' };
  return {
    hoursPerYd3,
    diggingHoursPerYd3: diggingHPerM3 * yd3,
    haulingHoursPerYd3: haulingHPerM3 * yd3,
    cycle: { value: cycleH, unit: 'h' },
    tripsPerYd3: tripsPerM3 * yd3,
    fitting: [...fitting],
    band: byHand(input) ? { ...SANITY_BAND } : null,
    laborRule: { quantity: 'sedimentVolume', unit: 'yd3', hoursPerUnit: decimal(hoursPerYd3).toFixed(2) },
    working: { ...working, steps: [...working.steps, last] },
    warnings,
  };
}

/** @throws DomainError at /excavator when the sediment is dug by hand too */
function inputOf(body: HaulCycleBody): HaulInput {
  const { handDigging, excavator } = body;
  if (handDigging != null && excavator != null) throw DomainError.at('/excavator', 'Give handDigging or excavator, not both; price the two parts of the work one by one.');
  return {
    carrier: body.carrier,
    distanceM: toSi(body.distance),
    slopePercent: body.slopePercent ?? 0,
    gateM: body.gateWidth == null ? null : toSi(body.gateWidth),
    digging: handDigging ?? (excavator == null ? null : excavatorOf(excavator)),
    densityKgPerM3: body.densityKgPerM3 ?? 1331,
    bulkingPercent: body.bulkingPercent ?? 25,
    efficiency: body.efficiency ?? 0.75,
    holdsM3: body.carrierVolume == null ? null : toSi(body.carrierVolume),
    payloadKg: body.carrierPayload == null ? null : toSi(body.carrierPayload),
    speedMPerS: body.feetPerMinute == null ? null : (body.feetPerMinute * 0.3048) / 60,
  };
}

function excavatorOf({ bucketVolume, fill, cycleSeconds, efficiency }: ExcavatorBody): Excavator {
  return { bucketM3: toSi(bucketVolume), fill: fill ?? 0.9, cycleS: cycleSeconds ?? 25, efficiency: efficiency ?? 0.75 };
}
