import { Decimal, sumDecimals } from '../../decimal.js';
import { roundMoney } from '../../money/index.js';
import { fromSi } from '../../quantity/index.js';
import type { CutPlan } from './cut-plan.js';
import type { Roll } from './strips.js';

export const ROLL_PRICE_BASES = ['roll', 'ft', 'm', 'ft2', 'm2'] as const;
export type RollPriceBasis = (typeof ROLL_PRICE_BASES)[number];

export interface RollPrice {
  readonly amount: Decimal;
  /** A price for a roll buys whole rolls; the others buy what is cut off. */
  readonly per: RollPriceBasis;
}

export interface SeamPrice {
  readonly amount: Decimal;
  readonly per: 'ft' | 'm';
}

/** What `boughtM` of a roll cost before rounding. */
export function goodsPrice(roll: Roll, price: RollPrice, boughtM: number): Decimal {
  if (price.per === 'roll') return price.amount.times(new Decimal(boughtM).div(roll.lengthM).toDecimalPlaces(9));
  return price.amount.times(price.per === 'ft' || price.per === 'm' ? fromSi(boughtM, price.per) : fromSi(boughtM * roll.widthM, price.per));
}

/** Cost of a plan: each roll's goods and the seams, each rounded once, half up, to the currency's minor unit. */
export function planCost(plan: CutPlan, rolls: readonly Roll[], prices: readonly RollPrice[], seam: SeamPrice | null, currency: string): Decimal {
  const goods = plan.strips.map(({ roll, boughtM }) => roundMoney(goodsPrice(rolls[roll] as Roll, prices[roll] as RollPrice, boughtM), currency));
  const seams = seam === null ? [] : [roundMoney(seam.amount.times(fromSi(plan.seamLengthM, seam.per)), currency)];
  return sumDecimals([...goods, ...seams]);
}
