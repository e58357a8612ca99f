import { DomainError } from '../errors.js';

/** @throws DomainError at `pointer` unless the value is finite and above 0 */
export function requirePositive(pointer: string, value: number): void {
  if (!(value > 0) || !Number.isFinite(value)) throw DomainError.at(pointer, 'This must be more than 0.');
}

/** @throws DomainError at `pointer` unless the value lies within the bounds, which are in `unit` */
export function requireWithin(pointer: string, value: number, least: number, most: number, unit: string): void {
  if (!(value >= least && value <= most)) throw DomainError.at(pointer, `This must lie between ${least} and ${most} ${unit}.`);
}
