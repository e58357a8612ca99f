import { Injectable } from '@nestjs/common';
import type { QueryDeepPartialEntity } from 'typeorm';
import type { Actor } from '../../platform/auth/actor.js';
import { entityPage, entityRows } from '../../platform/database/entity-rows.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import type { ListQuery, Page } from '../../platform/http/lists.js';
import { JobEntity } from './job.entity.js';
import { JobPlanEntity } from './job-plan.entity.js';
import type { PlannedWork } from './job-plan.js';

export interface JobFilter {
  readonly state?: string | undefined;
  readonly siteId?: string | undefined;
  readonly quoteId?: string | undefined;
}

/** All SQL of jobs and their plans. */
@Injectable()
export class JobsRepository {
  constructor(private readonly db: TenantDatabase) {}

  insert(actor: Actor, job: Omit<QueryDeepPartialEntity<JobEntity>, 'companyId'> & { id: string }, plan: readonly PlannedWork[]): Promise<void> {
    const { companyId } = actor;
    return this.db.write(actor, async (manager) => {
      await manager.insert(JobEntity, { ...job, companyId });
      const lines = plan.map((work, position) => ({ companyId, jobId: job.id, position, ...work }));
      if (lines.length > 0) await manager.insert(JobPlanEntity, lines);
    });
  }

  find(actor: Actor, key: { id: string } | { quoteId: string }): Promise<JobEntity | null> {
    return this.db.read(actor, (manager) => manager.findOne(JobEntity, { where: { companyId: actor.companyId, ...key } }));
  }

  /**
   * The job, held against changes of its state until the transaction ends. Rows that refer to the job may still be
   * written by others meanwhile.
   */
  lock(actor: Actor, id: string): Promise<JobEntity | null> {
    return this.db.write(actor, (manager) =>
      manager.findOne(JobEntity, { where: { companyId: actor.companyId, id }, lock: { mode: 'for_no_key_update' } }),
    );
  }

  /** Many jobs at once, each as `lock` holds one; in the order of their ids, so that two callers can't wait for each other. */
  async lockMany(actor: Actor, ids: readonly string[]): Promise<Map<string, JobEntity>> {
    const rows = await this.db.write(actor, (manager) =>
      entityRows(manager, JobEntity, 'WHERE company_id = $1 AND id = ANY ($2) ORDER BY id FOR NO KEY UPDATE', [actor.companyId, ids]),
    );
    return new Map(rows.map((row) => [row.id, row]));
  }

  /** Lets many jobs that this transaction holds start on their day; those that were planned are under way then. */
  async begin(actor: Actor, days: ReadonlyMap<string, string>): Promise<void> {
    if (days.size === 0) return;
    await this.db.write(actor, (manager) =>
      manager.query(
        `UPDATE job SET state = CASE state WHEN 'planned' THEN 'under-way' ELSE state END, started_on = began.day, version = version + 1
         FROM unnest($2::uuid[], $3::date[]) AS began (id, day) WHERE job.company_id = $1 AND job.id = began.id`,
        [actor.companyId, [...days.keys()], [...days.values()]],
      ),
    );
  }

  /** Writes to a job that this transaction holds. */
  update(actor: Actor, held: JobEntity, values: Partial<Pick<JobEntity, 'state' | 'startedOn' | 'finishedOn' | 'cancelledOn' | 'cancelReason'>>): Promise<JobEntity> {
    return this.db.write(actor, async (manager) => {
      const { companyId, id } = held;
      const version = held.version + 1;
      await manager.update(JobEntity, { companyId, id }, { ...values, version });
      return Object.assign(new JobEntity(), held, values, { version });
    });
  }

  /** Newest first. */
  list(actor: Actor, query: ListQuery, filter: JobFilter): Promise<Page<JobEntity>> {
    return this.db.read(actor, (manager) => entityPage(manager, JobEntity, query, { companyId: actor.companyId, ...filter }));
  }

  /** The plans of many jobs in one statement, each in the quote's order. */
  async plansOf(actor: Actor, jobIds: readonly string[]): Promise<Map<string, JobPlanEntity[]>> {
    const plans = new Map<string, JobPlanEntity[]>(jobIds.map((id) => [id, []]));
    if (jobIds.length === 0) return plans;
    const lines = await this.db.read(actor, (manager) =>
      entityRows(manager, JobPlanEntity, 'WHERE company_id = $1 AND job_id = ANY ($2) ORDER BY job_id, position', [actor.companyId, jobIds]),
    );
    for (const line of lines) plans.get(line.jobId)?.push(line);
    return plans;
  }
}
