import { Injectable } from '@nestjs/common';
import { Decimal } from '../../domain/decimal.js';
import { formatMoney } from '../../domain/money/index.js';
import type { Actor } from '../../platform/auth/actor.js';
import { renderDocument } from '../../platform/documents/index.js';
import type { CompanyEntity } from '../companies/index.js';
import { costCodeTitle, type DocumentLine, documentCompany, documentCustomer, type DocumentSite, documentSite } from '../customer-documents/index.js';
import { CustomersService } from '../customers/index.js';
import { FeaturesService } from '../features/index.js';
import { SitesService } from '../sites/index.js';
import type { DocumentScope } from './document-scope.js';
import { composeQuoteDocument } from './quote-document.js';
import type { QuoteLineEntity } from './quote-line.entity.js';
import type { StoredSection } from './quote-revision.entity.js';
import { isBase } from './quote-sections.js';
import type { QuoteEntity } from './quote.entity.js';
import type { QuoteSight } from './quotes.repository.js';

/** The PDF of a revision, addressed to the customer as they are now. */
@Injectable()
export class PrintQuote {
  constructor(
    private readonly customers: CustomersService,
    private readonly sites: SitesService,
    private readonly features: FeaturesService,
  ) {}

  /** @param dates those of the issue, YYYY-MM-DD */
  async execute(actor: Actor, company: CompanyEntity, { quote, revision, lines }: QuoteSight, dates: { issuedOn: string; validUntil: string }): Promise<Buffer> {
    const { title, currency, taxes } = revision;
    const amount = (value: Decimal | string): string => formatMoney(new Decimal(value), currency).amount;
    const customer = quote.customerId === null ? null : documentCustomer(await this.customers.find(actor, quote.customerId));
    const site = await this.siteOf(actor, quote);
    return renderDocument(
      composeQuoteDocument({
        ...dates,
        company: documentCompany(company),
        customer,
        site,
        number: quote.number,
        revision: revision.revision,
        title,
        currency,
        lines: lines.filter((line) => isBase(line, revision.sections)).map((line) => printable(line, amount)),
        scope: revision.sections.length === 0 ? null : scopeOf(revision.sections, lines, amount),
        netTotal: amount(revision.netTotal),
        taxes: taxes.map(({ name, rate, base, tax }) => ({ name, rate, base: amount(base), tax: amount(tax) })),
        grossTotal: amount(revision.grossTotal),
      }),
    );
  }

  private async siteOf(actor: Actor, { siteId, featureId }: QuoteEntity): Promise<DocumentSite | null> {
    if (siteId === null || featureId === null) return null;
    const site = await this.sites.find(actor, siteId);
    return documentSite(site, await this.features.find(actor, featureId));
  }
}

function scopeOf(sections: readonly StoredSection[], lines: readonly QuoteLineEntity[], amount: (value: Decimal | string) => string): DocumentScope {
  const printed = (key: string | null): DocumentLine[] => lines.filter(({ section }) => section === key).map((line) => printable(line, amount));
  return {
    always: printed(null),
    sections: sections.map(({ key, title, phase, optional, netTotal, taxTotal, grossTotal }) => {
      return { title, phase, optional, lines: printed(key), netTotal: amount(netTotal), taxTotal: amount(taxTotal), grossTotal: amount(grossTotal) };
    }),
  };
}

function printable({ kind, costCode, description, quantity, unit, unitPrice, amount: net }: QuoteLineEntity, amount: (value: Decimal) => string): DocumentLine {
  const counted = kind === 'labor' ? { quantity: null, unit: null, unitPrice: null } : { quantity: quantity?.toFixed() ?? null, unit, unitPrice: amount(unitPrice) };
  return { costCode: costCodeTitle(costCode), kind, description, ...counted, amount: amount(net) };
}
