import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { documentCustomer, type DocumentCustomer, documentSite, type DocumentSite } from '../customer-documents/index.js';
import { CustomersService } from '../customers/index.js';
import { FeaturesService } from '../features/index.js';
import { type JobEntity, JobsService } from '../jobs/index.js';
import { QuotesService } from '../quotes/index.js';
import { SitesService } from '../sites/index.js';

/** Who gets an invoice, for work done where, and the papers that led to it. */
export interface Recipient {
  readonly customer: DocumentCustomer;
  readonly site: DocumentSite | null;
  readonly jobNumber: string;
  readonly quoteNumber: string;
}

@Injectable()
export class InvoiceRecipient {
  constructor(
    private readonly jobs: JobsService,
    private readonly quotes: QuotesService,
    private readonly customers: CustomersService,
    private readonly sites: SitesService,
    private readonly features: FeaturesService,
  ) {}

  /** One query after another: within a transaction they share a connection. */
  async of(actor: Actor, jobId: string): Promise<Recipient> {
    const job = await this.jobs.find(actor, jobId);
    const { quote, revision } = await this.quotes.findAccepted(actor, job.quoteId);
    return {
      // A quote made without a survey may name no customer; then whoever accepted it is billed.
      customer: (await this.customerOf(actor, job)) ?? { name: revision.acceptedBy ?? '', addressLines: [], email: null, phone: null },
      site: await this.siteOf(actor, job),
      jobNumber: job.number,
      quoteNumber: quote.number,
    };
  }

  private async customerOf(actor: Actor, { customerId }: JobEntity): Promise<DocumentCustomer | null> {
    return customerId === null ? null : documentCustomer(await this.customers.find(actor, customerId));
  }

  private async siteOf(actor: Actor, { siteId, featureId }: JobEntity): Promise<DocumentSite | null> {
    if (siteId === null || featureId === null) return null;
    const site = await this.sites.find(actor, siteId);
    return documentSite(site, await this.features.find(actor, featureId));
  }
}
