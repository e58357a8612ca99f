import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { databaseFailure } from '../../platform/database/database-errors.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { Problem } from '../../platform/http/problem.js';
import { noSuchReference, stateConflict } from '../../platform/http/problems.js';
import type { Made } from '../../platform/resources/resource-store.js';
import { type JobEntity, JobsService } from '../jobs/index.js';
import { QuotesService } from '../quotes/index.js';
import { billedAs, lineBilledAs } from './billed-as.js';
import type { InvoiceEntity } from './invoice.entity.js';
import type { InvoiceBody } from './invoices.dto.js';
import { InvoicesRepository } from './invoices.repository.js';

/** Makes the draft of an invoice from what the customer accepted, line by line. */
@Injectable()
export class DraftInvoice {
  constructor(
    private readonly db: TenantDatabase,
    private readonly invoices: InvoicesRepository,
    private readonly jobs: JobsService,
    private readonly quotes: QuotesService,
  ) {}

  /** @throws Problem 422 for a job that is not there, 409 when it is billed already or cancelled */
  async execute(actor: Actor, body: InvoiceBody): Promise<Made<InvoiceEntity>> {
    const draft = (): Promise<Made<InvoiceEntity>> => this.db.write(actor, () => this.draft(actor, body));
    try {
      return await draft();
    } catch (error) {
      // Another request came in between our look and our insert; now its invoice can be seen.
      if (databaseFailure(error)?.constraint === 'uq_invoice__job_id') return draft();
      throw error;
    }
  }

  private async draft(actor: Actor, body: InvoiceBody): Promise<Made<InvoiceEntity>> {
    const before = await this.invoices.store.madeBefore(actor, body);
    if (before !== null) return { row: before, created: false };
    const job = await this.jobNamed(actor, body.jobId);
    await this.requireNotBilled(actor, body);
    if (job.state === 'cancelled') throw stateConflict(`Job ${job.number} is cancelled; there is nothing to bill.`, [{ pointer: '/jobId', detail: 'is a cancelled job' }]);
    const accepted = await this.quotes.findAccepted(actor, job.quoteId);
    const made = await this.invoices.store.create(actor, body, { ...billedAs(job, accepted), basis: body.basis, state: 'draft' });
    if (made.created) await this.invoices.addLines(actor, made.row.id, accepted.lines.map(lineBilledAs));
    return made;
  }

  private async jobNamed(actor: Actor, jobId: string): Promise<JobEntity> {
    try {
      return await this.jobs.find(actor, jobId);
    } catch (error) {
      if (error instanceof Problem && error.code === 'not-found') throw noSuchReference('/jobId', 'job');
      throw error;
    }
  }

  private async requireNotBilled(actor: Actor, { id, jobId, basis }: InvoiceBody): Promise<void> {
    const there = await this.invoices.standing(actor, jobId, basis);
    // The same request sent twice at once: the insert tells whether it is.
    if (there === null || there.id === id?.toLowerCase()) return;
    const name = there.number === null ? `the draft ${there.id}` : `invoice ${there.number} (${there.id})`;
    throw new Problem('already-there', `The job is billed already by ${name}. Use that one, or void it first.`, [{ pointer: '/jobId', detail: `has the ${basis} invoice ${there.id} already` }]);
  }
}
