import { Decimal } from '../decimal.js';
import { DomainError } from '../errors.js';
import { kindOf, requireKind, type Quantity } from './quantity.js';
import { unitRow, type Unit } from './unit-table.js';

/**
 * A value in another unit of the same kind, correct to the last bit a number holds: the decimal the number stands for
 * is scaled exactly and rounded once, so 24 ft is 7.3152 m and 1 yd3 is 27 ft3, without binary dust.
 * @throws DomainError when the units differ in kind, are unknown, or the value is not finite.
 */
export function convert(value: number, from: Unit, to: Unit): number {
  requireKind(to, kindOf(from));
  if (!Number.isFinite(value)) throw DomainError.at('', 'The value must be a finite number.');
  return from === to ? value : scale(value, from, to).toNumber();
}

/** The value in m, m2, m3, m3/s, kg, h or each. */
export function toSi(quantity: Quantity): number {
  kindOf(quantity.unit);
  if (!Number.isFinite(quantity.value)) throw DomainError.at('/value', 'The value must be a finite number.');
  const { times, by } = unitRow(quantity.unit);
  return new Decimal(quantity.value).times(times).div(by).toNumber();
}

/** An SI value (m, m2, m3, m3/s, kg, h, each) in `unit`. */
export function fromSi(value: number, unit: Unit): number {
  kindOf(unit);
  if (!Number.isFinite(value)) throw DomainError.at('', 'The value must be a finite number.');
  const { times, by } = unitRow(unit);
  return new Decimal(value).times(by).div(times).toNumber();
}

function scale(value: number, from: Unit, to: Unit): Decimal {
  const source = unitRow(from);
  const target = unitRow(to);
  return new Decimal(value).times(source.times).times(target.by).div(new Decimal(target.times).times(source.by));
}
