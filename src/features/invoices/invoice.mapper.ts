import { Decimal } from '../../domain/decimal.js';
import { minorUnits } from '../../domain/money/index.js';
import { type MoneyBody, toMoneyBody } from '../../platform/http/fields/index.js';
import type { InvoiceEntity } from './invoice.entity.js';
import type { InvoiceLineEntity } from './invoice-line.entity.js';
import type { InvoiceLineView, InvoiceSummaryView, InvoiceView } from './invoices.view.js';

export function toInvoiceSummary(row: InvoiceEntity): InvoiceSummaryView {
  const { id, number, state, basis, jobId, quoteId, quoteRevision, title, currency, issuedOn, dueOn, voidReason } = row;
  return {
    id, number, state, basis, jobId, quoteId, quoteRevision, title, currency, issuedOn, dueOn,
    netTotal: toMoneyBody(row.netTotal, currency),
    taxes: row.taxes.map(({ category, name, rate, base, tax }) => ({
      category, name, rate, base: toMoneyBody(new Decimal(base), currency), tax: toMoneyBody(new Decimal(tax), currency),
    })),
    grossTotal: toMoneyBody(row.grossTotal, currency),
    paidTotal: toMoneyBody(row.paidTotal, currency),
    balanceDue: toMoneyBody(balanceOf(row), currency),
    voidedAt: row.voidedAt?.toISOString() ?? null,
    voidReason,
    createdAt: row.createdAt.toISOString(),
  };
}

export function toInvoiceView(row: InvoiceEntity, lines: readonly InvoiceLineEntity[]): InvoiceView {
  return { ...toInvoiceSummary(row), lines: lines.map((line) => toLineView(line, row.currency)) };
}

/** What is still owed; nobody owes anything on a void invoice. */
export function balanceOf(row: Pick<InvoiceEntity, 'state' | 'grossTotal' | 'paidTotal'>): Decimal {
  return row.state === 'void' ? new Decimal(0) : row.grossTotal.minus(row.paidTotal);
}

function toLineView({ id, kind, costCode, description, quantity, unit, unitPrice, amount, taxCategory }: InvoiceLineEntity, currency: string): InvoiceLineView {
  return {
    id, kind, costCode, description,
    quantity: quantity?.toFixed() ?? null,
    unit,
    unitPrice: toUnitPrice(unitPrice, currency),
    amount: toMoneyBody(amount, currency),
    taxCategory,
  };
}

/** An hour may sell for a fraction of a cent, so a unit price shows up to four decimals; the amount is rounded. */
function toUnitPrice(price: Decimal, currency: string): MoneyBody {
  return { amount: price.toFixed(Math.max(minorUnits(currency), price.decimalPlaces())), currency };
}
