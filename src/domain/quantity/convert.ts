import { DomainError } from '../errors.js';
import { quotientOf, timesRatio, type Ratio } from './exact-ratio.js';
import { kindOf, requireKind, type Quantity } from './quantity.js';
import { unitRow, type Unit } from './unit-table.js';

/** One unit in another; as many as there are pairs of units of a kind. */
const KNOWN = new Map<string, Ratio>();

/**
 * A value in another unit of the same kind, correct to the last bit a number holds: the decimal the number stands for
 * is scaled exactly and rounded once, so 24 ft is 7.3152 m and 1 yd3 is 27 ft3, without binary dust.
 * @throws DomainError when the units differ in kind, are unknown, or the value is not finite.
 */
export function convert(value: number, from: Unit, to: Unit): number {
  requireKind(to, kindOf(from));
  if (!Number.isFinite(value)) throw DomainError.at('', 'The value must be a finite number.');
  if (from === to) return value;
  const pair = `${from} in ${to}`;
  const ratio = KNOWN.get(pair) ?? quotientOf(unitRow(from).si, unitRow(to).si);
  KNOWN.set(pair, ratio);
  return timesRatio(value, ratio);
}

/** The value in m, m2, m3, m3/s, kg, h or each. */
export function toSi(quantity: Quantity): number {
  kindOf(quantity.unit);
  if (!Number.isFinite(quantity.value)) throw DomainError.at('/value', 'The value must be a finite number.');
  return timesRatio(quantity.value, unitRow(quantity.unit).si);
}

/** An SI value (m, m2, m3, m3/s, kg, h, each) in `unit`. */
export function fromSi(value: number, unit: Unit): number {
  kindOf(unit);
  if (!Number.isFinite(value)) throw DomainError.at('', 'The value must be a finite number.');
  return timesRatio(value, unitRow(unit).perSi);
}
