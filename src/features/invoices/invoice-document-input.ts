import { Decimal } from '../../domain/decimal.js';
import { formatMoney } from '../../domain/money/index.js';
import type { CompanyEntity } from '../companies/index.js';
import { costCodeTitle, documentCompany, type DocumentLine } from '../customer-documents/index.js';
import type { InvoiceDocumentInput } from './invoice-document.js';
import type { Recipient } from './invoice-recipient.js';
import type { InvoiceEntity } from './invoice.entity.js';
import type { InvoiceLineEntity } from './invoice-line.entity.js';

/** An invoice about to be issued: it has its number and its dates. */
export type NumberedInvoice = Omit<InvoiceEntity, 'number' | 'issuedOn' | 'dueOn'> & { readonly number: string; readonly issuedOn: string; readonly dueOn: string };

/** What the printed invoice says. It is printed at issue, so nothing is paid yet. */
export function toDocumentInput(company: CompanyEntity, invoice: NumberedInvoice, lines: readonly InvoiceLineEntity[], recipient: Recipient): InvoiceDocumentInput {
  const { number, issuedOn, dueOn, title, currency } = invoice;
  const amount = (value: Decimal | string): string => formatMoney(new Decimal(value), currency).amount;
  return {
    company: documentCompany(company),
    ...recipient,
    number, issuedOn, dueOn, title, currency,
    lines: lines.map((line) => toDocumentLine(line, amount)),
    netTotal: amount(invoice.netTotal),
    taxes: invoice.taxes.map(({ name, rate, base, tax }) => ({ name, rate, base: amount(base), tax: amount(tax) })),
    grossTotal: amount(invoice.grossTotal),
    paidTotal: amount('0'),
    balanceDue: amount(invoice.grossTotal),
    paymentTerms: company.paymentInstructions,
  };
}

/** Labor shows neither hours nor their price: the printed table leaves them out, so they are not handed over. */
function toDocumentLine({ kind, costCode, description, quantity, unit, unitPrice, amount }: InvoiceLineEntity, money: (value: Decimal) => string): DocumentLine {
  const shared = { kind, costCode: costCodeTitle(costCode), description, amount: money(amount) };
  if (kind === 'labor') return { ...shared, quantity: null, unit: null, unitPrice: null };
  return { ...shared, quantity: quantity?.toFixed() ?? null, unit, unitPrice: money(unitPrice) };
}
