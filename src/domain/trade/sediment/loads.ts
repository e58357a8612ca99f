import { DomainError } from '../../errors.js';
import type { Working } from '../../working.js';
import { given, step } from '../working-lines.js';

export interface Vehicle {
  /** Level with its sides. */
  readonly boxM3: number;
  /** What it may legally carry. */
  readonly payloadKg: number;
}

export interface Loads {
  readonly loads: number;
  readonly byVolume: number;
  readonly byWeight: number;
  readonly limitedBy: 'volume' | 'weight' | 'both';
  /** How much fits a full load before the first of the two limits. */
  readonly perLoadM3: number;
  readonly perLoadKg: number;
  readonly working: Working;
}

/** A remainder smaller than this of a load is rounding, not a trip. */
const DUST = 1e-9;

/**
 * Loads of a truck or trailer: whichever of volume and weight is full first.
 * @param volumeM3 as loaded (bulked), from 0
 * @param weightKg of it
 * @throws DomainError at /boxVolume or /payload unless above 0
 * @see loads = max(⌈loose volume / box⌉, ⌈weight / legal payload⌉), plane arithmetic
 */
export function loadsOf(volumeM3: number, weightKg: number, { boxM3, payloadKg }: Vehicle): Loads {
  if (!(boxM3 > 0)) throw DomainError.at('/boxVolume', 'The box must hold something.');
  if (!(payloadKg > 0)) throw DomainError.at('/payload', 'The payload must be more than 0.');
  const byVolume = whole(volumeM3 / boxM3);
  const byWeight = whole(weightKg / payloadKg);
  const loads = Math.max(byVolume, byWeight);
  const share = Math.max(volumeM3 / boxM3, weightKg / payloadKg);
  return {
    loads,
    byVolume,
    byWeight,
    limitedBy: byVolume === byWeight ? 'both' : byVolume > byWeight ? 'volume' : 'weight',
    perLoadM3: share > 0 ? volumeM3 / share : 0,
    perLoadKg: share > 0 ? weightKg / share : 0,
    working: {
      rule: 'loads = the larger of volume / box and weight / payload, each rounded up',
      inputs: [given('volume as loaded', volumeM3, 'm3'), given('weight', weightKg, 'kg'), given('box', boxM3, 'm3'), given('payload', payloadKg, 'kg')],
      steps: [
        step('loads by volume', `${volumeM3} / ${boxM3}, rounded up`, byVolume, 'each'),
        step('loads by weight', `${weightKg} / ${payloadKg}, rounded up`, byWeight, 'each'),
        step('loads', `max of ${byVolume} and ${byWeight}`, loads, 'each'),
      ],
    },
  };
}

function whole(loads: number): number {
  return loads === 0 ? 0 : Math.max(1, Math.ceil(loads - DUST * Math.max(1, loads)));
}
