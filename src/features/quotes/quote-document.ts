import { documentFormat, type DocumentModel, type Signature } from '../../platform/documents/index.js';
import { BEFORE_THE_WORK, companyBlock, customerParty, documentLanguage, pricedTable, siteParty, totalsOf } from '../customer-documents/index.js';
import type { DocumentCompany, DocumentCustomer, DocumentSite, DocumentSums } from '../customer-documents/index.js';
import { choices, type DocumentScope, optionTotals, phaseTotals, scopeTable } from './document-scope.js';

/**
 * What a quote document is composed from; everything is computed before and only put into words here. Its lines and
 * totals are without the optional sections.
 */
export interface QuoteDocumentInput extends DocumentSums {
  readonly company: DocumentCompany;
  /** A price for work whose customer or place is not entered yet has none. */
  readonly customer: DocumentCustomer | null;
  readonly site: DocumentSite | null;
  readonly number: string;
  readonly revision: number;
  /** Dates without a time: "2027-03-01". */
  readonly issuedOn: string;
  readonly validUntil: string;
  readonly title: string;
  readonly currency: string;
  /** null for a quote without sections. */
  readonly scope: DocumentScope | null;
}

/** @throws RangeError when a total is not the sum of the lines, or a number or date is malformed */
export function composeQuoteDocument(input: QuoteDocumentInput): DocumentModel {
  const { company, scope } = input;
  const format = documentFormat(company.locale, input.currency);
  const choice = scope && choices(scope);
  const validUntil = format.date(input.validUntil);
  return {
    paperSize: company.paperSize,
    language: documentLanguage(company.locale),
    title: `Quote ${input.number}`,
    issuedAt: `${input.issuedOn}T00:00:00Z`,
    company: companyBlock(company),
    heading: 'Quote',
    reference: `${input.number}, revision ${input.revision}`,
    status: `Valid until ${validUntil}`,
    parties: [...(input.customer ? [customerParty('Prepared for', input.customer)] : []), ...(input.site ? [siteParty(input.site)] : [])],
    facts: [
      { label: 'Issued', value: format.date(input.issuedOn) },
      { label: 'Valid until', value: validUntil },
      { label: 'Total', value: format.money(input.grossTotal) },
    ],
    subject: input.title,
    introduction: [
      'This quote covers the work and materials listed below. What is not listed is not part of the price.',
    ],
    table: scope ? scopeTable(scope, input.currency, format) : pricedTable(input.lines, input.currency, format),
    totals: [...(scope ? phaseTotals(scope, input.netTotal, format) : []), ...totalsOf(input, format, true), ...(scope ? optionTotals(scope, format) : [])],
    notes: [...(choice ? [choice] : []), { heading: 'What happens next', paragraphs: nextSteps(validUntil), numbered: true }],
    cautions: [BEFORE_THE_WORK],
    signature: acceptance(input, format.money(input.grossTotal), choice !== null),
    footer: `${company.name} · Quote ${input.number}, revision ${input.revision}`,
  };
}

function acceptance({ number, revision }: QuoteDocumentInput, total: string, chooses: boolean): Signature {
  const accepted = `I accept quote ${number}, revision ${revision}, for a total of ${total}`;
  return {
    heading: 'Acceptance',
    statement: chooses
      ? `${accepted} and with the changes that I name on the first line, and ask for the work listed in it to be done.`
      : `${accepted}, and ask for the work listed in it to be done.`,
    ...(chooses ? { above: [{ label: 'Options to add, and phases to leave for later', weight: 1 }] } : {}),
    fields: [
      { label: 'Name in print', weight: 3 },
      { label: 'Signature', weight: 3 },
      { label: 'Date', weight: 1.6 },
    ],
  };
}

function nextSteps(validUntil: string): string[] {
  return [
    'Read the lines above, and ask about anything that is not plain.',
    `To accept, sign under “Acceptance” and return a copy by ${validUntil}; the price holds until then.`,
    'We then settle a start date with you.',
    'If the opened pond shows something this quote does not cover, we show you and give you a price for it first. It is done only when you have agreed.',
  ];
}
