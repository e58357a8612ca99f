import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { Problem } from '../../../platform/http/problem.js';
import { noSuchReference, notPossible } from '../../../platform/http/problems.js';
import { FeaturesService } from '../../features/index.js';
import { type JobEntity, JobsService } from '../../jobs/index.js';

/** Where a fact belongs. */
export interface FactPlace {
  readonly job: JobEntity;
  readonly featureId: string | null;
}

/**
 * Finds the job and the feature of a fact. The state of the job is not asked, nor who is on its crew: a phone may have
 * been without a signal while the job was finished or the crew changed, and what happened is not lost for that.
 */
@Injectable()
export class FactPlaces {
  constructor(
    private readonly jobs: JobsService,
    private readonly features: FeaturesService,
  ) {}

  /** @throws Problem 422 at /jobId or /featureId */
  async find(actor: Actor, { jobId, featureId }: { jobId: string; featureId?: string | null }): Promise<FactPlace> {
    const job = await there('/jobId', 'job', () => this.jobs.find(actor, jobId));
    if (featureId === undefined || featureId === null) return { job, featureId: job.featureId };
    const feature = await there('/featureId', 'feature', () => this.features.find(actor, featureId));
    if (job.siteId !== null && feature.siteId !== job.siteId) {
      throw notPossible(`${feature.name} is not at the site of job ${job.number}.`, [{ pointer: '/featureId', detail: 'must be a pond, stream or waterfall at the job\'s site' }]);
    }
    return { job, featureId: feature.id };
  }
}

async function there<T>(pointer: string, what: string, find: () => Promise<T>): Promise<T> {
  try {
    return await find();
  } catch (error) {
    if (error instanceof Problem && error.code === 'not-found') throw noSuchReference(pointer, what);
    throw error;
  }
}
