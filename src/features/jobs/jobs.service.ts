import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import type { Decimal } from '../../domain/decimal.js';
import type { Actor } from '../../platform/auth/actor.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import type { ListQuery, Page } from '../../platform/http/lists.js';
import { notFound } from '../../platform/http/problems.js';
import { DocumentNumbers } from '../../platform/numbering/document-numbers.js';
import type { JobEntity } from './job.entity.js';
import type { JobPlanEntity } from './job-plan.entity.js';
import { planByCostCode, type PlannedWork } from './job-plan.js';
import { type JobFilter, JobsRepository } from './jobs.repository.js';

/** What a job takes over from the quote revision that was accepted. */
export interface AcceptedWork {
  readonly quoteId: string;
  readonly quoteRevision: number;
  readonly title: string;
  readonly customerId: string | null;
  readonly siteId: string | null;
  readonly featureId: string | null;
  readonly timeZone: string;
  readonly currency: string;
  /** Net of tax. */
  readonly contractTotal: Decimal;
  readonly contractTax: Decimal;
  readonly plan: readonly PlannedWork[];
}

const FIRST_NUMBER = 1001;

/** The jobs of the company. */
@Injectable()
export class JobsService {
  constructor(
    private readonly db: TenantDatabase,
    private readonly jobs: JobsRepository,
    private readonly numbers: DocumentNumbers,
  ) {}

  /**
   * Makes the job of an accepted quote, or answers the one that it has already: a quote has one job for ever. The
   * caller holds the quote's row, so that two acceptances at once can't both make one.
   */
  createFromQuote(actor: Actor, work: AcceptedWork): Promise<{ id: string }> {
    return this.db.write(actor, async () => {
      const before = await this.findByQuote(actor, work.quoteId);
      if (before !== null) return { id: before.id };
      const { plan, ...accepted } = work;
      const id = uuidv7();
      const number = `J-${FIRST_NUMBER - 1 + (await this.numbers.next(actor, 'job'))}`;
      await this.jobs.insert(actor, { ...accepted, id, number, state: 'planned' }, planByCostCode(plan));
      return { id };
    });
  }

  /** @throws Problem 404, alike for a job of another company and for none */
  async find(actor: Actor, id: string): Promise<JobEntity> {
    const job = await this.jobs.find(actor, { id });
    if (job === null) throw notFound('job');
    return job;
  }

  findByQuote(actor: Actor, quoteId: string): Promise<JobEntity | null> {
    return this.jobs.find(actor, { quoteId });
  }

  list(actor: Actor, query: ListQuery, filter: JobFilter): Promise<Page<JobEntity>> {
    return this.jobs.list(actor, query, filter);
  }

  /** What was planned for each cost code, of many jobs in one statement; a job without a plan has an empty list. */
  plansOf(actor: Actor, jobIds: readonly string[]): Promise<Map<string, JobPlanEntity[]>> {
    return this.jobs.plansOf(actor, jobIds);
  }

  /** What was planned for each cost code of one job, in the quote's order. */
  async planOf(actor: Actor, jobId: string): Promise<JobPlanEntity[]> {
    return (await this.jobs.plansOf(actor, [jobId])).get(jobId) ?? [];
  }
}
