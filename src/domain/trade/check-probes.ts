import { Decimal } from '../decimal.js';
import { DomainError, type Violation } from '../errors.js';
import { metresPer } from './numbers.js';
import { MAX_LENGTH_M } from './outline.js';
import { MAX_DEPTH_M, MAX_READINGS, type ProbeReading, type Probes } from './probes.js';

/** A sheet with the columns swapped is wrong in every row; the first rows show that as well as all of them. */
const MAX_VIOLATIONS = 20;
/** The outline, whose unit places are in, is not known here: the bound of the smallest unit, mm, holds for all. */
const FARTHEST = MAX_LENGTH_M * 1000;

/**
 * Negative thickness is refused, never taken as zero: it is a swapped or misread pair, and would lower the price.
 * @throws DomainError at /unit, /readings or /readings/i/toSediment, /toBottom, /at
 */
export function requireSoundProbes(probes: Probes): void {
  const factor = metresPer(probes.unit);
  const { length } = probes.readings;
  if (length < 1 || length > MAX_READINGS) {
    throw DomainError.at('/readings', `There must be from 1 to ${MAX_READINGS} readings.`);
  }
  const deepest = new Decimal(MAX_DEPTH_M).div(factor).toNumber();
  const violations: Violation[] = [];
  for (let i = 0; i < length && violations.length < MAX_VIOLATIONS; i += 1) {
    violations.push(...readingViolations(probes.readings[i] as ProbeReading, deepest, `/readings/${i}`));
  }
  if (violations.length > 0) throw new DomainError(violations);
}

function readingViolations(reading: ProbeReading, deepest: number, pointer: string): Violation[] {
  const found: Violation[] = [];
  for (const name of ['toSediment', 'toBottom'] as const) {
    const depth = reading[name];
    if (!(depth >= 0 && depth <= deepest)) {
      found.push({ pointer: `${pointer}/${name}`, detail: `A depth must be from 0 to ${MAX_DEPTH_M} m below the full-water line.` });
    }
  }
  if (found.length === 0 && reading.toBottom < reading.toSediment) {
    found.push({
      pointer: `${pointer}/toBottom`,
      detail: 'The hard bottom cannot lie above the sediment; check whether the two depths are swapped.',
    });
  }
  const { at } = reading;
  if (at !== undefined && !at.every((coordinate) => Math.abs(coordinate) <= FARTHEST)) {
    found.push({ pointer: `${pointer}/at`, detail: `A place is a pair [x, y] in the unit of the outline, within ${MAX_LENGTH_M / 1000} km of its origin.` });
  }
  return found;
}
