import type { Decimal } from '../../domain/decimal.js';
import type { TaxCategory } from '../../domain/money/index.js';
import { quoteTotals } from '../../domain/pricing/index.js';
import type { StoredTax } from './quote-revision.entity.js';

/** The sums of some lines, as a revision stores them. */
export interface QuoteSums {
  readonly netTotal: Decimal;
  readonly taxTotal: Decimal;
  readonly grossTotal: Decimal;
  readonly taxes: StoredTax[];
}

/**
 * Tax is computed once a category on just these lines.
 * @throws DomainError when the total is more than money can hold, or a line is of no category given
 */
export function sumsOf(lines: readonly { readonly taxCategory: string | null; readonly amount: Decimal }[], categories: readonly TaxCategory[], currency: string): QuoteSums {
  const taxable = lines.map(({ taxCategory, amount }) => ({ category: taxCategory, amount }));
  const { netTotal, taxTotal, grossTotal, taxes } = quoteTotals(taxable, categories, currency);
  return { netTotal, taxTotal, grossTotal, taxes: taxes.map(({ category, name, rate, base, tax }) => ({ category, name, rate: rate.toFixed(), base: base.toFixed(), tax: tax.toFixed() })) };
}
