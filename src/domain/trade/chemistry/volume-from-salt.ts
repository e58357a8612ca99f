import { plain } from '../../decimal.js';
import { DomainError } from '../../errors.js';
import type { Working } from '../../working.js';
import { given, step } from '../working-lines.js';
import { requirePositive, requireWithin } from '../input-checks.js';

export interface VolumeFromSalt {
  readonly volumeM3: number;
  readonly leastM3: number;
  /** null when the rise is not more than its own error. */
  readonly mostM3: number | null;
  readonly working: Working;
  readonly warnings: string[];
}

/**
 * The water that a known weight of salt was dissolved in, from the rise of the reading.
 * @param saltKg dissolved, above 0
 * @param beforePpt, afterPpt readings in g/L, 0 to 40, the second above the first
 * @param errorPpt how far the rise may be off, 0 to 5 g/L
 * @throws DomainError at /salt, /beforePpt, /afterPpt or /errorPpt
 * @see the trade's rule "pounds × 120 = gallons at 1 ppt"; exactly × 119.83
 */
export function volumeFromSalt(saltKg: number, beforePpt: number, afterPpt: number, errorPpt: number): VolumeFromSalt {
  requirePositive('/salt', saltKg);
  requireWithin('/beforePpt', beforePpt, 0, 40, 'g/L');
  requireWithin('/afterPpt', afterPpt, 0, 40, 'g/L');
  requireWithin('/errorPpt', errorPpt, 0, 5, 'g/L');
  if (afterPpt <= beforePpt) throw DomainError.at('/afterPpt', 'This must be more than the reading before; wait until the salt is dissolved and mixed, and read again.');
  const rise = afterPpt - beforePpt;
  const volumeM3 = saltKg / rise;
  const working: Working = {
    rule: 'volume = salt / rise of the reading',
    inputs: [given('salt', saltKg, 'kg'), given('before', beforePpt, 'g/L'), given('after', afterPpt, 'g/L'), given('error of the rise', errorPpt, 'g/L')],
    steps: [
      step('rise', `${plain(afterPpt)} − ${plain(beforePpt)}`, rise, 'g/L'),
      step('volume', `${plain(saltKg)} / ${plain(rise)}`, volumeM3, 'm3'),
    ],
  };
  const warnings = [
    ...(errorPpt > rise * 0.1 ? ['The reading may be off by more than a tenth of the rise: the volume is no better. Use a finer meter or more salt.'] : []),
    ...(afterPpt > 1 ? ['Above 1 g/L (0.1 %) many pond plants suffer (common practice).'] : []),
  ];
  return { volumeM3, leastM3: saltKg / (rise + errorPpt), mostM3: errorPpt < rise ? saltKg / (rise - errorPpt) : null, working, warnings };
}
