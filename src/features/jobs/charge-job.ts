import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { localDate } from '../../platform/clock/clock.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { noSuchReference, stateConflict } from '../../platform/http/problems.js';
import { requireCostCode } from './cost-codes.js';
import type { JobEntity, JobState } from './job.entity.js';
import { JobsRepository } from './jobs.repository.js';

const FOR_HOURS: readonly JobState[] = ['planned', 'under-way'];
/** A supplier's bill often comes after the work is done. */
const FOR_COSTS: readonly JobState[] = ['planned', 'under-way', 'finished'];

/**
 * Asks a job whether something may be charged to it. Each call holds the job until the transaction ends, so that it
 * can't be finished or cancelled between the question and the charge.
 */
@Injectable()
export class ChargeJob {
  constructor(
    private readonly db: TenantDatabase,
    private readonly jobs: JobsRepository,
  ) {}

  /**
   * For an hour. The first one starts the job: a crew on site must not be stopped because the office forgot a button.
   * The job starts on the day of its earliest hour, whatever order phones send them in.
   * @throws Problem 422 at /jobId or /costCode, 409 when the job is finished or cancelled
   */
  withHours(actor: Actor, charge: { jobId: string; costCode: string; startedAt: Date }): Promise<JobEntity> {
    return this.db.write(actor, async () => {
      const job = await this.hold(actor, charge.jobId, FOR_HOURS, 'hours');
      await this.requireCode(actor, job, charge.costCode);
      const startedOn = startMovedBy(job, charge.startedAt);
      return startedOn === null ? job : this.jobs.update(actor, job, { state: 'under-way', startedOn });
    });
  }

  /**
   * For a purchase, made, changed or voided, on any cost code: what nobody planned must be booked too, or the job looks better than it was.
   * @throws Problem 422 at /jobId, 409 when the job is cancelled
   */
  withCost(actor: Actor, jobId: string): Promise<JobEntity> {
    return this.hold(actor, jobId, FOR_COSTS, 'costs');
  }

  /** Before hours of the job are changed or voided. @throws Problem 409 when its hours are closed */
  async holdForHours(actor: Actor, jobId: string): Promise<void> {
    await this.hold(actor, jobId, FOR_HOURS, 'hours');
  }

  private async hold(actor: Actor, jobId: string, states: readonly JobState[], what: string): Promise<JobEntity> {
    return requireOpen(await this.jobs.lock(actor, jobId), states, what);
  }

  private async requireCode(actor: Actor, job: JobEntity, costCode: string): Promise<void> {
    const plan = (await this.jobs.plansOf(actor, [job.id])).get(job.id) ?? [];
    requireCostCode(plan.map((work) => work.costCode), costCode);
  }
}

/** @throws Problem 422 at /jobId, 409 when the job is in none of the states */
function requireOpen(job: JobEntity | null, states: readonly JobState[], what: string): JobEntity {
  if (job === null) throw noSuchReference('/jobId', 'job');
  if (states.includes(job.state)) return job;
  throw stateConflict(`Job ${job.number} is ${job.state}; its ${what} are closed. Ask the office to reopen the job.`, [
    { pointer: '/jobId', detail: `must be a job that is ${states.join(' or ')}; this one is ${job.state}` },
  ]);
}

/** @throws Problem 422 at /jobId, 409 when its hours are closed */
export function requireOpenForHours(job: JobEntity | null): JobEntity {
  return requireOpen(job, FOR_HOURS, 'hours');
}

/** The day from which the job is under way once these hours are charged to it; null when that changes nothing. */
export function startMovedBy(job: JobEntity, startedAt: Date): string | null {
  const day = localDate(startedAt, job.timeZone);
  return job.state === 'under-way' && job.startedOn !== null && job.startedOn <= day ? null : day;
}
