import { decimal } from '../../domain/decimal.js';
import { documentFormat, type DocumentFormat, type DocumentModel, type Fact, type Note, type Total } from '../../platform/documents/index.js';
import { AFTER_THE_WORK, companyBlock, customerParty, documentLanguage, pricedTable, requireSum, siteParty, totalsOf } from '../customer-documents/index.js';
import type { DocumentCompany, DocumentCustomer, DocumentSite, DocumentSums } from '../customer-documents/index.js';

/** What an invoice document is composed from; everything is computed before and only put into words here. */
export interface InvoiceDocumentInput extends DocumentSums {
  readonly company: DocumentCompany;
  readonly customer: DocumentCustomer;
  /** null when the job names no place. */
  readonly site: DocumentSite | null;
  readonly number: string;
  readonly jobNumber: string;
  readonly quoteNumber: string | null;
  /** Dates without a time: "2027-06-01". */
  readonly issuedOn: string;
  readonly dueOn: string;
  readonly title: string;
  readonly currency: string;
  readonly paidTotal: string;
  readonly balanceDue: string;
  /** How the company wants to be paid, in its own words; lines are kept. */
  readonly paymentTerms: string | null;
}

/** @throws RangeError when a total is not the sum of what is printed, or a number or date is malformed */
export function composeInvoiceDocument(input: InvoiceDocumentInput): DocumentModel {
  const { company } = input;
  const format = documentFormat(company.locale, input.currency);
  return {
    paperSize: company.paperSize,
    language: documentLanguage(company.locale),
    title: `Invoice ${input.number}`,
    issuedAt: `${input.issuedOn}T00:00:00Z`,
    company: companyBlock(company),
    heading: 'Invoice',
    reference: input.number,
    status: status(input, format),
    parties: [customerParty('Billed to', input.customer), ...(input.site === null ? [] : [siteParty(input.site)])],
    facts: facts(input, format),
    subject: input.title,
    introduction: [],
    table: pricedTable(input.lines, input.currency, format),
    totals: totals(input, format),
    notes: [howToPay(input, format)],
    cautions: [AFTER_THE_WORK],
    footer: `${company.name} · Invoice ${input.number}`,
  };
}

function isOwed({ balanceDue }: InvoiceDocumentInput): boolean {
  return decimal(balanceDue).greaterThan(0);
}

function status(input: InvoiceDocumentInput, format: DocumentFormat): string {
  return isOwed(input) ? `${format.money(input.balanceDue)} due by ${format.date(input.dueOn)}` : 'Paid in full';
}

function facts(input: InvoiceDocumentInput, format: DocumentFormat): Fact[] {
  const quote = input.quoteNumber === null ? [] : [{ label: 'Quote', value: input.quoteNumber }];
  return [
    { label: 'Job', value: input.jobNumber },
    ...quote,
    { label: 'Issued', value: format.date(input.issuedOn) },
    { label: 'Due', value: format.date(input.dueOn) },
  ];
}

/** The payments stand as a negative amount, so that the column adds up to the balance. */
function totals(input: InvoiceDocumentInput, format: DocumentFormat): Total[] {
  const paid = decimal(input.paidTotal);
  const deducted = paid.isZero() ? input.paidTotal : paid.negated().toFixed();
  requireSum('balance due', input.balanceDue, [input.grossTotal, deducted]);
  return [
    ...totalsOf(input, format, false),
    { label: 'Paid so far', value: format.money(deducted), strong: false },
    { label: 'Balance due', value: format.money(input.balanceDue), strong: true },
  ];
}

function howToPay(input: InvoiceDocumentInput, format: DocumentFormat): Note {
  const heading = 'How to pay';
  if (!isOwed(input)) return { heading, paragraphs: ['Nothing is owed on this invoice. Thank you.'] };
  const reach = [input.company.phone, input.company.email].filter((each) => each !== null && each !== '').join(' or ');
  return {
    heading,
    paragraphs: [
      `Please pay ${format.money(input.balanceDue)} by ${format.date(input.dueOn)}, and give invoice number ${input.number} with the payment.`,
      ...(input.paymentTerms ? [input.paymentTerms] : []),
      ...(reach === '' ? [] : [`Questions about this invoice: ${reach}.`]),
    ],
  };
}
