import { Decimal } from '../decimal.js';

/** Contract less cost. */
export function margin(contract: Decimal, cost: Decimal): Decimal {
  return new Decimal(contract).minus(cost);
}

/**
 * Margin in percent of the contract, unrounded; null for a contract of 0, which has no percentage. A margin is a share
 * of the price, a markup one of the cost: 25 % markup is 20 % margin.
 */
export function marginPercent(contract: Decimal, cost: Decimal): Decimal | null {
  return contract.isZero() ? null : margin(contract, cost).times(100).div(contract);
}
