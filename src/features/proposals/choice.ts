import { Decimal } from '../../domain/decimal.js';
import { fromSi, kindOf, type QuantityKind } from '../../domain/quantity/index.js';
import type { PartEntity } from '../catalog/index.js';

/** How many alternatives are shown. */
export const MOST_ALTERNATIVES = 10;

/** So much of a part, in the part's unit and in whole packs. */
export interface Line {
  readonly part: PartEntity;
  readonly quantity: Decimal;
}

/** A part that would do, with how much of it and why. */
export interface Fitting extends Line {
  /** What is bought together with it, such as the second roll that a sheet is cut from; mostly nothing. */
  readonly also: readonly Line[];
  readonly why: string;
  /** What to know when it is the one that is suggested. */
  readonly cautions: readonly string[];
  /** What it costs the company at this quantity, by which the cheapest is found; never shown. */
  readonly cost: Decimal;
}

/** A part that would not do, and why. */
export interface RuledOut {
  readonly part: PartEntity;
  readonly reason: string;
}

export interface Choice {
  /** Cheapest first, unless the choice says otherwise. */
  readonly fitting: readonly Fitting[];
  readonly ruledOut: readonly RuledOut[];
}

/** What a part can say of its use here: how much of it, or why not. */
export type Verdict = { readonly quantity: Decimal; readonly why: string; readonly cautions?: readonly string[] } | { readonly reason: string };

/** Asks every part of a kind, and puts those that would do in the order of their cost. */
export function choose(parts: readonly PartEntity[], judge: (part: PartEntity) => Verdict): Choice {
  const [fitting, ruledOut]: [Fitting[], RuledOut[]] = [[], []];
  for (const part of parts) {
    const verdict = judge(part);
    if ('reason' in verdict) ruledOut.push({ part, reason: verdict.reason });
    else fitting.push(fit([lineOf(part, verdict.quantity)], verdict.why, verdict.cautions));
  }
  return { fitting: fitting.sort(cheaperFirst), ruledOut };
}

/** @param lines at least one */
export function fit(lines: readonly Line[], why: string, cautions: readonly string[] = []): Fitting {
  const [first, ...also] = lines as readonly [Line, ...Line[]];
  const cost = lines.reduce((sum, { part, quantity }) => sum.plus(part.unitCost.times(quantity)), new Decimal(0));
  return { ...first, also, why, cautions, cost };
}

/** A quote buys whole packs; a suggestion that did not would be priced below what it costs. */
export function lineOf(part: PartEntity, quantity: Decimal): Line {
  return { part, quantity: quantity.div(part.packSize).ceil().times(part.packSize) };
}

/** Of two that cost the same, the one whose stock number comes first, so that the same catalog suggests the same. */
export function cheaperFirst(a: Fitting, b: Fitting): number {
  return a.cost.cmp(b.cost) || (a.part.sku < b.part.sku ? -1 : 1);
}

/** A quantity in SI as a decimal in the part's unit, to the next hundredth up; null when the unit is of another kind. */
export function inPartUnit(si: number, kind: QuantityKind, part: PartEntity): Decimal | null {
  if (kindOf(part.unit) !== kind) return null;
  // A billionth less, so that the dust of a conversion does not buy a hundredth more.
  return new Decimal(fromSi(si * (1 - 1e-9), part.unit)).toDecimalPlaces(2, Decimal.ROUND_UP);
}
