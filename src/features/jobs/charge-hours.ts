import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { localDate } from '../../platform/clock/clock.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { noSuchReference } from '../../platform/http/problems.js';
import { requireCostCode } from './cost-codes.js';
import type { JobEntity } from './job.entity.js';
import type { JobPlanEntity } from './job-plan.entity.js';
import { JobsRepository } from './jobs.repository.js';

export interface HoursOnJob {
  readonly jobId: string;
  readonly startedAt: Date;
}

/** Jobs that can't be finished, cancelled or reopened until the transaction ends. */
export class HeldJobs {
  constructor(
    readonly jobs: ReadonlyMap<string, JobEntity>,
    private readonly plans: ReadonlyMap<string, readonly JobPlanEntity[]>,
  ) {}

  /** @throws Problem 422 at /jobId */
  require(jobId: string): JobEntity {
    const job = this.jobs.get(jobId.toLowerCase());
    if (job === undefined) throw noSuchReference('/jobId', 'job');
    return job;
  }

  /** The job, if hours may go to the cost code. @throws Problem 422 at /jobId or /costCode */
  requireTakes({ jobId, costCode }: { readonly jobId: string; readonly costCode: string }): JobEntity {
    const job = this.require(jobId);
    requireCostCode((this.plans.get(job.id) ?? []).map((work) => work.costCode), costCode);
    return job;
  }
}

/** Charges hours to jobs, any number of them in three statements. */
@Injectable()
export class ChargeHours {
  constructor(
    private readonly db: TenantDatabase,
    private readonly jobs: JobsRepository,
  ) {}

  hold(actor: Actor, jobIds: readonly string[]): Promise<HeldJobs> {
    return this.db.write(actor, async () => {
      const ids = [...new Set(jobIds.map((id) => id.toLowerCase()))];
      return new HeldJobs(await this.jobs.lockMany(actor, ids), await this.jobs.plansOf(actor, ids));
    });
  }

  /**
   * A planned job starts with its first hour that counts, on the day of its earliest: a crew on site must not be
   * stopped because the office forgot a button. An earlier hour that arrives later moves the start back.
   */
  begin(actor: Actor, held: HeldJobs, counting: readonly HoursOnJob[]): Promise<void> {
    const days = new Map<string, string>();
    for (const { jobId, startedAt } of counting) {
      const job = held.require(jobId);
      const day = localDate(startedAt, job.timeZone);
      const before = days.get(job.id) ?? job.startedOn;
      if (before === null || day < before) days.set(job.id, day);
    }
    return this.jobs.begin(actor, days);
  }
}
