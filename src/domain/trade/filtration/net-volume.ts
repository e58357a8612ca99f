import { DomainError } from '../../errors.js';
import { requirePositive } from '../input-checks.js';

export interface WaterParts {
  /** Of the empty basin, above 0. */
  readonly basinM3: number;
  /** What rock, gravel and planters displace, 0 or more. */
  readonly displacedM3: number;
  /** What pipes, filters and a stream hold besides, 0 or more. */
  readonly besidesM3: number;
}

/**
 * The water that is really there, which a dose is for.
 * @throws DomainError at /basinVolume, /displacedVolume or /besidesVolume
 */
export function netWaterM3({ basinM3, displacedM3, besidesM3 }: WaterParts): number {
  requirePositive('/basinVolume', basinM3);
  if (!(displacedM3 >= 0) || displacedM3 >= basinM3) throw DomainError.at('/displacedVolume', 'This must be at least 0 and less than the volume of the basin.');
  if (!(besidesM3 >= 0) || !Number.isFinite(besidesM3)) throw DomainError.at('/besidesVolume', 'This must be at least 0.');
  return basinM3 - displacedM3 + besidesM3;
}
