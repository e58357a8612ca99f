import type { Decimal } from '../../domain/decimal.js';
import { Decimal as D } from '../../domain/decimal.js';
import { fromSi, kindOf, type QuantityKind } from '../../domain/quantity/index.js';
import type { PartEntity } from '../catalog/index.js';

/** A part that would do, with how much of it and why. */
export interface Fitting {
  readonly part: PartEntity;
  /** In the part's unit. */
  readonly quantity: Decimal;
  readonly why: string;
  /** What it costs the company at this quantity, by which the cheapest is found; never shown. */
  readonly cost: Decimal;
}

/** A part that would not do, and why. */
export interface RuledOut {
  readonly part: PartEntity;
  readonly reason: string;
}

export interface Choice {
  /** Cheapest first. */
  readonly fitting: Fitting[];
  readonly ruledOut: RuledOut[];
}

/** What a part can say of its use here: how much of it, or why not. */
export type Verdict = { readonly quantity: Decimal; readonly why: string; readonly cost?: Decimal } | { readonly reason: string };

/** Asks every part of a kind, and puts those that would do in the order of their cost. */
export function choose(parts: readonly PartEntity[], judge: (part: PartEntity) => Verdict): Choice {
  const [fitting, ruledOut]: [Fitting[], RuledOut[]] = [[], []];
  for (const part of parts) {
    const verdict = judge(part);
    if ('reason' in verdict) ruledOut.push({ part, reason: verdict.reason });
    else fitting.push({ part, quantity: verdict.quantity, why: verdict.why, cost: verdict.cost ?? part.unitCost.times(verdict.quantity) });
  }
  fitting.sort((a, b) => a.cost.cmp(b.cost) || (a.part.sku < b.part.sku ? -1 : 1));
  return { fitting, ruledOut };
}

/** A quantity in SI as a decimal in the part's unit, to the next hundredth up; null when the unit is of another kind. */
export function inPartUnit(si: number, kind: QuantityKind, part: PartEntity): Decimal | null {
  if (kindOf(part.unit) !== kind) return null;
  return new D(fromSi(si, part.unit)).toDecimalPlaces(2, D.ROUND_UP);
}
