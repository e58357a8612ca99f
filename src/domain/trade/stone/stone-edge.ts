import { plain } from '../../decimal.js';
import { fields, DomainError } from '../../errors.js';
import type { Working } from '../../working.js';
import { given, step } from '../working-lines.js';
import { purchaseAfterReuse, type Purchase } from './reclaimed.js';
import { checkVoidFraction } from './void-fraction.js';

/** 3 ft: from here on a stacked edge retains earth, and falling stone can hurt. */
const RETAINING_HEIGHT_M = 0.9144;

export interface StoneEdgeInput {
  /** m, above 0 */
  readonly lengthM: number;
  /** m, above 0 */
  readonly heightM: number;
  /** Front to back; m, above 0. */
  readonly thicknessM: number;
  /** Of the solid rock; 2,400 to 2,720 kg/m3 (150 to 170 lb/ft3) is usual. */
  readonly densityKgPerM3: number;
  /** Share of the edge that is gaps, 0 to below 1. */
  readonly voidFraction: number;
  /** Stone on the site that can be used again; kg, 0 or more. */
  readonly reclaimedKg: number;
}

export interface StoneEdge extends Purchase {
  /** With the gaps; m3. */
  readonly bulkVolumeM3: number;
  readonly massKg: number;
  readonly warnings: string[];
  readonly working: Working;
}

/**
 * Stone for a stacked edge: mass = length × height × thickness × density × (1 − void fraction). Definition; rock density
 * from the source.
 * @throws DomainError at /length, /height, /thickness, /voidFraction or /reclaimed
 * @see USACE streambank protection manual, App. A, A.2.3 (density 150 to 170 lb/ft3)
 */
export function stoneEdge({ lengthM, heightM, thicknessM, densityKgPerM3, voidFraction, reclaimedKg }: StoneEdgeInput): StoneEdge {
  fields({ length: () => above0(lengthM), height: () => above0(heightM), thickness: () => above0(thicknessM) });
  const warnings = checkVoidFraction(voidFraction);
  if (heightM > RETAINING_HEIGHT_M) {
    warnings.push('An edge above 3 ft (0.91 m), with a load behind it or near a building is a retaining wall: many places want a licensed design and a permit; ask the local code official.');
  }
  const bulkVolumeM3 = lengthM * heightM * thicknessM;
  const massKg = bulkVolumeM3 * densityKgPerM3 * (1 - voidFraction);
  const purchase = purchaseAfterReuse(massKg, reclaimedKg);
  const working: Working = {
    rule: 'mass = length × height × thickness × density × (1 − void fraction); what is reclaimed is used first',
    inputs: [
      given('length', lengthM, 'm'), given('height', heightM, 'm'), given('thickness', thicknessM, 'm'),
      given('density', densityKgPerM3, 'kg/m3'), given('void fraction', voidFraction), given('reclaimed', reclaimedKg, 'kg'),
    ],
    steps: [
      step('volume with gaps', [lengthM, heightM, thicknessM].map(plain).join(' × '), bulkVolumeM3, 'm3'),
      step('mass', `${plain(bulkVolumeM3)} × ${plain(densityKgPerM3)} × (1 − ${plain(voidFraction)})`, massKg, 'kg'),
      step('to buy', `${plain(massKg)} − min(${plain(massKg)}, ${plain(reclaimedKg)})`, purchase.toBuyKg, 'kg'),
    ],
  };
  return { bulkVolumeM3, massKg, ...purchase, warnings, working };
}

function above0(value: number): number {
  if (value > 0) return value;
  throw DomainError.at('', 'This must be more than 0.');
}
