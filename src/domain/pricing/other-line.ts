import { plain, type Decimal } from '../decimal.js';
import type { Working } from '../working.js';
import { amountOf, requireNotNegative } from './price-checks.js';

export interface OtherLineInput {
  /** A negative quantity takes something back. */
  readonly quantity: Decimal;
  readonly unitPrice: Decimal;
  readonly unitCost: Decimal;
  readonly currency: string;
}

export interface OtherLine {
  readonly amount: Decimal;
  readonly cost: Decimal;
  readonly working: Working;
}

/**
 * Amount = quantity × unit price, cost = quantity × unit cost, each rounded half up.
 * @throws DomainError at /unitCost, or at /quantity when the amount is too large
 */
export function otherLine({ quantity, unitPrice, unitCost, currency }: OtherLineInput): OtherLine {
  requireNotNegative(unitCost, '/unitCost');
  const amount = amountOf(quantity, unitPrice, currency, '/quantity');
  const cost = amountOf(quantity, unitCost, currency, '/quantity');
  const working = {
    rule: 'Amount = quantity × unit price, rounded half up',
    inputs: [
      { name: 'quantity', value: plain(quantity) },
      { name: 'unit price', value: plain(unitPrice), unit: currency },
    ],
    steps: [
      { label: 'amount', expression: `${plain(quantity)} × ${plain(unitPrice)}`, value: plain(amount), unit: currency },
    ],
  };
  return { amount, cost, working };
}
