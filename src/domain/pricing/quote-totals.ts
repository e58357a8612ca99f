import { sumDecimals, type Decimal } from '../decimal.js';
import { DomainError } from '../errors.js';
import { requireWithinLimit, taxByCategory, type TaxableLine, type TaxCategory, type Taxes } from '../money/index.js';

export interface QuoteTotals extends Taxes {
  readonly netTotal: Decimal;
  readonly grossTotal: Decimal;
}

/**
 * Net = sum of the lines, taxes once per category, gross = net + taxes. The same for quotes, change orders and
 * invoices, and whatever the order of the lines.
 * @throws DomainError at /lines/i/category, /categories/i, or /lines when the total is more than money can hold
 * @see EN 16931-1, BR-CO-10, BR-CO-13, BR-CO-14, BR-CO-15
 */
export function quoteTotals(
  lines: readonly TaxableLine[],
  categories: readonly TaxCategory[],
  currency: string,
): QuoteTotals {
  const taxes = taxByCategory(lines, categories, currency);
  const netTotal = sumDecimals(lines.map(({ amount }) => amount));
  const grossTotal = netTotal.plus(taxes.taxTotal);
  try {
    requireWithinLimit(netTotal);
    requireWithinLimit(grossTotal);
  } catch {
    throw DomainError.at('/lines', 'The total would be too large; split the work over several quotes.');
  }
  return { netTotal, ...taxes, grossTotal };
}
