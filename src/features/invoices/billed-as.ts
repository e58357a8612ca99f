import type { JobEntity } from '../jobs/index.js';
import type { AcceptedQuote } from '../quotes/index.js';
import type { InvoiceEntity } from './invoice.entity.js';
import type { NewLine } from './invoices.repository.js';

type Billed = Pick<InvoiceEntity, 'jobId' | 'quoteId' | 'quoteRevision' | 'title' | 'currency' | 'netTotal' | 'taxTotal' | 'grossTotal' | 'taxes'>;

/** The totals and taxes of what was taken, to the cent: computing them anew could follow a tax rate changed since. */
export function billedAs(job: JobEntity, { revision: { currency }, sums: { netTotal, taxTotal, grossTotal, taxes } }: AcceptedQuote): Billed {
  return { jobId: job.id, quoteId: job.quoteId, quoteRevision: job.quoteRevision, title: job.title, currency, netTotal, taxTotal, grossTotal, taxes };
}

/** A labor line is billed by the hours that were priced, so that quantity × unit price is its amount. */
export function lineBilledAs({ kind, costCode, description, quantity, unit, hours, unitPrice, amount, taxCategory }: AcceptedQuote['lines'][number]): NewLine {
  const counted = kind === 'labor' ? { quantity: hours, unit: 'h' } : { quantity, unit };
  return { kind, costCode, description, ...counted, unitPrice, amount, taxCategory };
}
