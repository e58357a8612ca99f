import { DomainError } from '../errors.js';
import { isUnit, UNITS, unitRow, type QuantityKind, type Unit } from './unit-table.js';

export interface Quantity {
  readonly value: number;
  readonly unit: Unit;
}

/** @throws DomainError (pointer "") when `unit` is none, listing the units there are. */
export function kindOf(unit: Unit): QuantityKind {
  if (!isUnit(unit)) throw DomainError.at('', `"${String(unit)}" is not a unit; use one of ${UNITS.join(', ')}.`);
  return unitRow(unit).kind;
}

/** The units of a kind, smallest US unit first, as they are listed in messages. */
export function unitsOf(kind: QuantityKind): readonly Unit[] {
  return UNITS.filter((unit) => unitRow(unit).kind === kind);
}

/** @throws DomainError (pointer "") when `unit` is not one of `kind`, listing those that are. */
export function requireKind(unit: Unit | null | undefined, kind: QuantityKind): asserts unit is Unit {
  if (isUnit(unit) && unitRow(unit).kind === kind) return;
  const missing = unit === undefined || unit === null;
  const told = typeof unit === 'string' ? `"${unit.slice(0, 40)}" is not a unit of ${kind}` : `This must be the name of a unit of ${kind}`;
  throw DomainError.at('', `${missing ? 'The unit is missing' : told}; use one of ${unitsOf(kind).join(', ')}.`);
}
