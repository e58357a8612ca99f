import { fields, within } from '../errors.js';
import { finiteNumber, isNumberPair, listOf, numberPair, objectOf, type JsonObject } from '../json-values.js';
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
    readings: () => listOf(from.readings, MAX_READINGS).map((reading, i) => quickly(reading) ?? within(`/${i}`, () => carefully(reading))),
  });
  requireSoundProbes(probes);
  return probes;
}

/** A place that was not noted may be missing or null: phones send both. Null for what the careful reader must look at. */
function quickly(value: unknown): ProbeReading | null {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return null;
  const { at, toSediment, toBottom, ...others } = value as JsonObject;
  if (!isFiniteNumber(toSediment) || !isFiniteNumber(toBottom) || Object.keys(others).length > 0) return null;
  if (at === undefined || at === null) return { toSediment, toBottom };
  return isNumberPair(at) ? { at: [at[0], at[1]], toSediment, toBottom } : null;
}

function isFiniteNumber(value: unknown): value is number {
  return Number.isFinite(value);
}

/** @throws DomainError at what is wrong with it */
function carefully(value: unknown): ProbeReading {
  const from = objectOf(value, ['at', 'toSediment', 'toBottom']);
  const depths = fields({
    toSediment: () => finiteNumber(from.toSediment),
    toBottom: () => finiteNumber(from.toBottom),
  });
  if (from.at === undefined || from.at === null) return depths;
  return { at: within('/at', () => numberPair(from.at)), ...depths };
}
