import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { noSuchReference, stateConflict } from '../../platform/http/problems.js';
import type { JobEntity, JobState } from './job.entity.js';
import { JobsRepository } from './jobs.repository.js';

/** A supplier's bill often comes after the work is done. */
const FOR_COSTS: readonly JobState[] = ['planned', 'under-way', 'finished'];

/** Asks a job whether a purchase may be charged to it. */
@Injectable()
export class ChargeJob {
  constructor(private readonly jobs: JobsRepository) {}

  /**
   * For a purchase, made, changed or voided, on any cost code: what nobody planned must be booked too, or the job looks
   * better than it was. Holds the job until the transaction ends, so that it can't be cancelled in between.
   * @throws Problem 422 at /jobId, 409 when the job is cancelled
   */
  async withCost(actor: Actor, jobId: string): Promise<JobEntity> {
    const job = await this.jobs.lock(actor, jobId);
    if (job === null) throw noSuchReference('/jobId', 'job');
    if (FOR_COSTS.includes(job.state)) return job;
    throw stateConflict(`Job ${job.number} is ${job.state}; its costs are closed. Ask the office to reopen the job.`, [
      { pointer: '/jobId', detail: `must be a job that is ${FOR_COSTS.join(' or ')}; this one is ${job.state}` },
    ]);
  }
}
