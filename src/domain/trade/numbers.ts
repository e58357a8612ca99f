import { Decimal, plain } from '../decimal.js';
import { DomainError, within } from '../errors.js';
import { finiteNumber } from '../json-values.js';
import { convert, requireKind, type Quantity, type QuantityKind, type Unit } from '../quantity/index.js';
import { MAX_LENGTH_M, MIN_LENGTH_M, type Point } from './outline.js';

/** A length from 1 mm to 10 km, in metres. @throws DomainError at /value or /unit */
export function lengthInMetres(quantity: Quantity): number {
  const metres = positiveInUnit(quantity, 'length', 'm');
  if (metres < MIN_LENGTH_M) throw DomainError.at('/value', `This must be at least ${MIN_LENGTH_M * 1000} mm; check the unit and decimal point.`);
  if (metres <= MAX_LENGTH_M) return metres;
  throw DomainError.at('/value', `This must be at most ${MAX_LENGTH_M / 1000} km; check the unit and decimal point.`);
}

/** A quantity above 0 in `unit`. @throws DomainError at /value or /unit */
export function positiveInUnit(quantity: Quantity, kind: QuantityKind, unit: Unit): number {
  within('/unit', () => requireKind(quantity.unit, kind));
  // Of the least number above 0, nothing is left in a larger unit.
  const converted = convert(within('/value', () => finiteNumber(quantity.value)), quantity.unit, unit);
  if (converted > 0) return converted;
  throw DomainError.at('/value', 'This must be above 0.');
}

/** The metres in one `unit` of length, exact. @throws DomainError at /unit */
export function metresPer(unit: Unit): Decimal {
  within('/unit', () => requireKind(unit, 'length'));
  return new Decimal(convert(1, unit, 'm'));
}

/** Exactly scaled and rounded once, so that a figure entered in feet stays free of binary dust. */
export function scaled(value: number, factor: Decimal): number {
  return new Decimal(value).times(factor).toNumber();
}

/** Good to the last bit or two: for places, which only warnings look at, and there are thousands of them. */
export function inMetres([x, y]: Point, factor: number): Point {
  return [x * factor, y * factor];
}

/** "24 ft": a quantity as it was entered. */
export function asEntered(quantity: Quantity): string {
  return `${plain(quantity.value)} ${quantity.unit}`;
}
