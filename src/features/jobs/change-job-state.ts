import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { Clock } from '../../platform/clock/clock.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { notFound, stateConflict } from '../../platform/http/problems.js';
import type { JobEntity, JobState } from './job.entity.js';
import { JobsRepository } from './jobs.repository.js';

type Change = Partial<Pick<JobEntity, 'state' | 'startedOn' | 'finishedOn' | 'cancelledOn' | 'cancelReason'>>;

/** What people do to a job as a whole. Each may be repeated: a job that is there already is answered as it stands. */
@Injectable()
export class ChangeJobState {
  constructor(
    private readonly db: TenantDatabase,
    private readonly jobs: JobsRepository,
    private readonly clock: Clock,
  ) {}

  /** @throws Problem 409 for a finished or cancelled job */
  start(actor: Actor, id: string): Promise<JobEntity> {
    return this.change(actor, id, ['under-way'], (job) => {
      if (job.state !== 'planned') throw refusal(job, 'can not start', 'Reopen it first.');
      return { state: 'under-way', startedOn: this.today(job) };
    });
  }

  /** @throws Problem 409 for a job that was not started, or is cancelled */
  finish(actor: Actor, id: string): Promise<JobEntity> {
    return this.change(actor, id, ['finished'], (job) => {
      if (job.state !== 'under-way') throw refusal(job, 'can not be finished', job.state === 'planned' ? 'Start it first, or cancel it.' : 'Reopen it first.');
      return { state: 'finished', finishedOn: this.today(job) };
    });
  }

  /** Takes a finished or cancelled job up again, as it was before: planned when nobody had started it. */
  reopen(actor: Actor, id: string): Promise<JobEntity> {
    return this.change(actor, id, ['planned', 'under-way'], (job) => ({
      state: job.startedOn === null ? 'planned' : 'under-way', finishedOn: null, cancelledOn: null, cancelReason: null,
    }));
  }

  /**
   * Ends a job that will not be done, or not to its end. What was charged to it stays and keeps counting: a job that
   * was called off halfway is the very one whose loss the owner must see.
   * @throws Problem 409 for a finished job
   */
  cancel(actor: Actor, id: string, reason: string): Promise<JobEntity> {
    return this.change(actor, id, ['cancelled'], (job) => {
      if (job.state === 'finished') throw refusal(job, 'can not be cancelled', 'The work is done; reopen it first if that is wrong.');
      return { state: 'cancelled', cancelledOn: this.today(job), cancelReason: reason };
    });
  }

  private change(actor: Actor, id: string, there: readonly JobState[], to: (job: JobEntity) => Change): Promise<JobEntity> {
    return this.db.write(actor, async () => {
      const job = await this.jobs.lock(actor, id);
      if (job === null) throw notFound('job');
      return there.includes(job.state) ? job : this.jobs.update(actor, job, to(job));
    });
  }

  private today(job: JobEntity): string {
    return this.clock.today(job.timeZone);
  }
}

function refusal(job: JobEntity, what: string, advice: string): Error {
  return stateConflict(`Job ${job.number} is ${job.state} and ${what}. ${advice}`);
}
