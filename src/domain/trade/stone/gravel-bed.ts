import { plain } from '../../decimal.js';
import { DomainError } from '../../errors.js';
import type { Working } from '../../working.js';
import { given, step } from '../working-lines.js';
import { purchaseAfterReuse, type Purchase } from './reclaimed.js';
import { checkVoidFraction } from './void-fraction.js';

/** Rock that ponds see; a grain density outside says that bulk density and void fraction don't belong together. */
const GRAIN_KG_PER_M3 = { low: 2200, high: 3200 } as const;

export interface GravelBedInput {
  /** m2, above 0 */
  readonly areaM2: number;
  /** m, above 0 */
  readonly depthM: number;
  /** Dry, with the voids; kg/m3. */
  readonly bulkDensityKgPerM3: number;
  /** 0 to below 1 */
  readonly voidFraction: number;
  /** The largest stone in the layer; m; null when unknown. */
  readonly largestStoneM: number | null;
  /** kg, 0 or more */
  readonly reclaimedKg: number;
}

export interface GravelBed extends Purchase {
  readonly bulkVolumeM3: number;
  readonly massKg: number;
  /** What the voids hold when flooded; m3. */
  readonly waterHeldM3: number;
  /** What the grains take away from the water when flooded; m3. */
  readonly waterDisplacedM3: number;
  readonly warnings: string[];
  readonly working: Working;
}

/**
 * Gravel by area and depth: mass = area × depth × dry bulk density; the voids hold n of its volume as water, the grains
 * displace the rest. Definition; a layer is no thinner than its largest stone by the source.
 * @throws DomainError at /area, /depth, /voidFraction or /reclaimed
 * @see EM 1110-2-1601 (1 July 1970), layer thickness
 */
export function gravelBed({ areaM2, depthM, bulkDensityKgPerM3, voidFraction, largestStoneM, reclaimedKg }: GravelBedInput): GravelBed {
  if (!(areaM2 > 0)) throw DomainError.at('/area', 'The area must be more than 0.');
  if (!(depthM > 0)) throw DomainError.at('/depth', 'The depth must be more than 0.');
  const warnings = checkVoidFraction(voidFraction);
  const grain = bulkDensityKgPerM3 / (1 - voidFraction);
  if (grain < GRAIN_KG_PER_M3.low || grain > GRAIN_KG_PER_M3.high) {
    warnings.push(`Bulk density and void fraction together mean grains of ${Math.round(grain)} kg/m3, which is unlike rock (${GRAIN_KG_PER_M3.low} to ${GRAIN_KG_PER_M3.high} kg/m3); check both.`);
  }
  if (largestStoneM !== null && depthM < largestStoneM) warnings.push('The layer is thinner than its largest stone: such stones stand out of it, and the quantity is too small.');
  const bulkVolumeM3 = areaM2 * depthM;
  const massKg = bulkVolumeM3 * bulkDensityKgPerM3;
  const waterHeldM3 = bulkVolumeM3 * voidFraction;
  const waterDisplacedM3 = bulkVolumeM3 - waterHeldM3;
  const purchase = purchaseAfterReuse(massKg, reclaimedKg);
  const working: Working = {
    rule: 'mass = area × depth × dry bulk density; water held = volume × void fraction; water displaced = the rest of the volume',
    inputs: [
      given('area', areaM2, 'm2'), given('depth', depthM, 'm'), given('bulk density', bulkDensityKgPerM3, 'kg/m3'),
      given('void fraction', voidFraction), given('reclaimed', reclaimedKg, 'kg'),
    ],
    steps: [
      step('volume', `${plain(areaM2)} × ${plain(depthM)}`, bulkVolumeM3, 'm3'),
      step('mass', `${plain(bulkVolumeM3)} × ${plain(bulkDensityKgPerM3)}`, massKg, 'kg'),
      step('water held', `${plain(bulkVolumeM3)} × ${plain(voidFraction)}`, waterHeldM3, 'm3'),
      step('water displaced', `${plain(bulkVolumeM3)} − ${plain(waterHeldM3)}`, waterDisplacedM3, 'm3'),
      step('to buy', `${plain(massKg)} − min(${plain(massKg)}, ${plain(reclaimedKg)})`, purchase.toBuyKg, 'kg'),
    ],
  };
  return { bulkVolumeM3, massKg, waterHeldM3, waterDisplacedM3, ...purchase, warnings, working };
}
