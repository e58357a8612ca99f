import { fromSi, type Quantity, type Unit } from '../../../../domain/quantity/index.js';

/** An SI figure in a unit, or null where there is none. */
export function inUnit(value: number, unit: Unit): Quantity;
export function inUnit(value: number | null, unit: Unit): Quantity | null;
export function inUnit(value: number | null, unit: Unit): Quantity | null {
  return value === null ? null : { value: fromSi(value, unit), unit };
}

/** m/s in ft/s. */
export function feetPerSecond(metresPerSecond: number): number {
  return fromSi(metresPerSecond, 'ft');
}
