import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { requireOpenForHours, startMovedBy } from './charge-job.js';
import { requireCostCode } from './cost-codes.js';
import type { JobEntity } from './job.entity.js';
import type { JobPlanEntity } from './job-plan.entity.js';
import { JobsRepository } from './jobs.repository.js';

export interface HoursOnJob {
  readonly jobId: string;
  readonly costCode: string;
  readonly startedAt: Date;
}

/** Jobs that can't be finished or cancelled until the transaction ends. */
export class HeldJobs {
  constructor(
    readonly jobs: ReadonlyMap<string, JobEntity>,
    private readonly plans: ReadonlyMap<string, readonly JobPlanEntity[]>,
  ) {}

  /** @throws Problem 422 at /jobId or /costCode, 409 when the job is finished or cancelled */
  requireTakes({ jobId, costCode }: Omit<HoursOnJob, 'startedAt'>): void {
    const job = requireOpenForHours(this.jobs.get(jobId.toLowerCase()) ?? null);
    requireCostCode((this.plans.get(job.id) ?? []).map((work) => work.costCode), costCode);
  }
}

/** Asks jobs what `ChargeJob.withHours` asks one, for any number of hours in three statements. */
@Injectable()
export class ChargeManyHours {
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

  /** Starts the jobs on the day of the earliest of the hours that were taken, or moves their start back to it. */
  begin(actor: Actor, held: HeldJobs, taken: readonly HoursOnJob[]): Promise<void> {
    const days = new Map<string, string>();
    for (const { jobId, startedAt } of taken) {
      const job = held.jobs.get(jobId.toLowerCase());
      const day = job === undefined ? null : startMovedBy(job, startedAt);
      if (job === undefined || day === null) continue;
      const before = days.get(job.id);
      if (before === undefined || day < before) days.set(job.id, day);
    }
    return this.jobs.begin(actor, days);
  }
}
