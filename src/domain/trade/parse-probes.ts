import { fields, within } from '../errors.js';
import { finiteNumber, listOf, numberPair, objectOf } from '../json-values.js';
import { parseUnit } from '../quantity/index.js';
import { requireSoundProbes } from './check-probes.js';
import { MAX_READINGS, type ProbeReading, type Probes } from './probes.js';

/**
 * Probe readings from untrusted JSON, checked for their form and their depths.
 * @throws DomainError with pointers into `value`, such as /readings/3/toBottom
 */
export function parseProbes(value: unknown): Probes {
  const from = objectOf(value, ['unit', 'readings']);
  const probes = fields({
    unit: () => parseUnit(from.unit, 'length'),
    readings: () => listOf(from.readings, MAX_READINGS).map((reading, i) => within(`/${i}`, () => readReading(reading))),
  });
  requireSoundProbes(probes);
  return probes;
}

/** A place that was not noted may be missing or null: phones send both. */
function readReading(value: unknown): ProbeReading {
  const from = objectOf(value, ['at', 'toSediment', 'toBottom']);
  const depths = fields({
    toSediment: () => finiteNumber(from.toSediment),
    toBottom: () => finiteNumber(from.toBottom),
  });
  if (from.at === undefined || from.at === null) return depths;
  return { at: within('/at', () => numberPair(from.at)), ...depths };
}
