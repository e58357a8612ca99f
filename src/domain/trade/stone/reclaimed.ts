import { DomainError } from '../../errors.js';

export interface Purchase {
  /** Of the reclaimed stone, what the work takes; kg. */
  readonly reusedKg: number;
  /** kg */
  readonly toBuyKg: number;
  /** Reclaimed stone that stays over; kg. */
  readonly leftOverKg: number;
}

/**
 * What is bought when stone that lies on the site is used first. Needed = reused + bought; reclaimed = reused + left over.
 * @param neededKg 0 or more
 * @param reclaimedKg 0 or more
 * @throws DomainError at /reclaimed when it is below 0
 */
export function purchaseAfterReuse(neededKg: number, reclaimedKg: number): Purchase {
  if (!(reclaimedKg >= 0)) throw DomainError.at('/reclaimed', 'Reclaimed stone must be 0 or more.');
  const reusedKg = Math.min(neededKg, reclaimedKg);
  return { reusedKg, toBuyKg: neededKg - reusedKg, leftOverKg: reclaimedKg - reusedKg };
}
