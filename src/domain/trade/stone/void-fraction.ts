import { DomainError } from '../../errors.js';

/** Outside these the figure is more likely a void ratio e = n / (1 − n), or a slip, than a measured void fraction. */
const USUAL = { low: 0.2, high: 0.5 } as const;

/**
 * Warnings about a void fraction n, the empty share of a heap; 0.4 is usual for clean angular stone of one size.
 * @throws DomainError at /voidFraction unless 0 <= n < 1
 */
export function checkVoidFraction(voidFraction: number): string[] {
  if (!(voidFraction >= 0 && voidFraction < 1)) throw DomainError.at('/voidFraction', 'The void fraction must be from 0 to below 1.');
  if (voidFraction >= USUAL.low && voidFraction <= USUAL.high) return [];
  return [`A void fraction of ${voidFraction} is outside the usual ${USUAL.low} to ${USUAL.high}; make sure that it is no void ratio (voids against solids).`];
}
