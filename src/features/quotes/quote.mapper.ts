import { Decimal } from '../../domain/decimal.js';
import { minorUnits } from '../../domain/money/index.js';
import { type MoneyBody, toMoneyBody } from '../../platform/http/fields/index.js';
import type { QuoteLineEntity } from './quote-line.entity.js';
import type { QuoteRevisionEntity, StoredSection, StoredTax } from './quote-revision.entity.js';
import type { QuoteLineView, QuoteSectionView, QuoteSummaryView, QuoteTaxView, QuoteView } from './quote-views.dto.js';
import type { QuoteEntity } from './quote.entity.js';
import type { QuoteSight } from './quotes.repository.js';

/** All that a summary shows of a revision: what a list reads. */
export const SUMMARY_COLUMNS = [
  'id', 'revision', 'state', 'title', 'reason', 'surveyId', 'validUntil', 'rulesAsOf', 'currency', 'netTotal', 'taxTotal', 'grossTotal', 'issuedOn', 'acceptedBy', 'acceptedOn',
  'acceptedNetTotal', 'acceptedTaxTotal', 'acceptedGrossTotal',
] as const satisfies readonly (keyof QuoteRevisionEntity)[];

export type SummaryOfRevision = Pick<QuoteRevisionEntity, (typeof SUMMARY_COLUMNS)[number]>;

export function toQuoteSummary(quote: QuoteEntity, row: SummaryOfRevision): QuoteSummaryView {
  const { revision, state, title, reason, surveyId, currency, validUntil, rulesAsOf, issuedOn, acceptedBy, acceptedOn } = row;
  const ifAccepted = (amount: Decimal | null): MoneyBody | null => (amount === null ? null : toMoneyBody(amount, currency));
  const { id, number, featureId, siteId, customerId } = quote;
  return {
    id,
    number,
    revision,
    state,
    // Nothing lies between two revisions, and a superseded one always has its next.
    supersededByRevision: state === 'superseded' ? revision + 1 : null,
    title,
    reason,
    surveyId,
    featureId,
    siteId,
    customerId,
    currency,
    validUntil,
    rulesAsOf,
    issuedOn,
    acceptedBy,
    acceptedOn,
    netTotal: toMoneyBody(row.netTotal, currency),
    taxTotal: toMoneyBody(row.taxTotal, currency),
    grossTotal: toMoneyBody(row.grossTotal, currency),
    acceptedNetTotal: ifAccepted(row.acceptedNetTotal),
    acceptedTaxTotal: ifAccepted(row.acceptedTaxTotal),
    acceptedGrossTotal: ifAccepted(row.acceptedGrossTotal),
    createdAt: quote.createdAt.toISOString(),
  };
}

export function toQuoteView({ quote, revision, lines }: QuoteSight): QuoteView {
  const { currency, sections, acceptedTaxes, acceptedSections } = revision;
  return {
    ...toQuoteSummary(quote, revision),
    lines: lines.map((line) => toLineView(line, currency)),
    taxes: revision.taxes.map((tax) => toTaxView(tax, currency)),
    sections: sections.map((section) => toSectionView(section, acceptedSections, currency)),
    acceptedTaxes: acceptedTaxes?.map((tax) => toTaxView(tax, currency)) ?? null,
  };
}

function toTaxView({ category, name, rate, base, tax }: StoredTax, currency: string): QuoteTaxView {
  return { category, name, rate, base: toMoneyBody(new Decimal(base), currency), tax: toMoneyBody(new Decimal(tax), currency) };
}

function toSectionView({ key, title, phase, optional, ...totals }: StoredSection, taken: readonly string[] | null, currency: string): QuoteSectionView {
  const money = (amount: string): MoneyBody => toMoneyBody(new Decimal(amount), currency);
  return {
    key,
    title,
    phase,
    optional,
    netTotal: money(totals.netTotal),
    taxTotal: money(totals.taxTotal),
    grossTotal: money(totals.grossTotal),
    taken: taken?.includes(key) ?? null,
  };
}

function toLineView(line: QuoteLineEntity, currency: string): QuoteLineView {
  const { id, kind, costCode, description, unit, taxCategory, ruleId, partId, section, working } = line;
  return {
    id,
    kind,
    costCode,
    description,
    quantity: line.quantity?.toFixed() ?? null,
    unit,
    hours: line.hours?.toFixed() ?? null,
    unitPrice: rateBody(line.unitPrice, currency),
    amount: toMoneyBody(line.amount, currency),
    unitCost: line.unitCost === null ? null : toMoneyBody(line.unitCost, currency),
    cost: toMoneyBody(line.cost, currency),
    taxCategory,
    ruleId,
    partId,
    section,
    working,
  };
}

/** The price of an hour may be finer than the currency: 68.125 × 8 h is an amount of whole cents. */
function rateBody(rate: Decimal, currency: string): MoneyBody {
  return { amount: rate.toFixed(Math.max(minorUnits(currency), rate.decimalPlaces())), currency };
}
