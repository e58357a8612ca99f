import { Body, Controller, Query } from '@nestjs/common';
import { type Actor, EVERYONE, LEADS, OFFICE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ActionRoute, ListRoute, ReadRoute } from '../../platform/http/api.js';
import { IdParam } from '../../platform/http/id-param.js';
import { mapPage, type Page } from '../../platform/http/lists.js';
import { type Reply, tagged } from '../../platform/http/reply.js';
import { ChangeJobState } from './change-job-state.js';
import type { JobEntity } from './job.entity.js';
import { toJobView } from './job.mapper.js';
import { JobsQuery, JobView } from './jobs.dto.js';
import { JobsService } from './jobs.service.js';
import { ReasonBody } from './reason.dto.js';

@Controller('v1/jobs')
export class JobsController {
  constructor(
    private readonly jobs: JobsService,
    private readonly states: ChangeJobState,
  ) {}

  @ListRoute(JobView, { roles: EVERYONE, summary: 'List the jobs', description: 'A job is made by accepting a quote.' })
  async list(@CurrentActor() actor: Actor, @Query() query: JobsQuery): Promise<Page<JobView>> {
    const { state, siteId, quoteId } = query;
    const page = await this.jobs.list(actor, query, { state, siteId, quoteId });
    const plans = await this.jobs.plansOf(actor, page.items.map((job) => job.id));
    return mapPage(page, (job) => toJobView(actor, job, plans.get(job.id) ?? []));
  }

  @ReadRoute(JobView, { roles: EVERYONE, summary: 'Read a job' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<JobView>> {
    return this.answer(actor, await this.jobs.find(actor, id));
  }

  @ActionRoute(JobView, { path: ':id/start', bodyless: true, roles: LEADS, summary: 'Start a job', description: 'Not needed before hours are logged: the first one starts the job by itself.' })
  async start(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<JobView>> {
    return this.answer(actor, await this.states.start(actor, id));
  }

  @ActionRoute(JobView, { path: ':id/finish', bodyless: true, roles: LEADS, summary: 'Finish a job', description: 'Closes it for hours; suppliers\' late bills may still be charged to it.' })
  async finish(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<JobView>> {
    return this.answer(actor, await this.states.finish(actor, id));
  }

  @ActionRoute(JobView, { path: ':id/reopen', bodyless: true, roles: OFFICE, summary: 'Reopen a job', description: 'Takes a finished or cancelled job up again; one that nobody had started is planned again.' })
  async reopen(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<JobView>> {
    return this.answer(actor, await this.states.reopen(actor, id));
  }

  @ActionRoute(JobView, { path: ':id/cancel', roles: OFFICE, summary: 'Cancel a job', description: 'Closes it for hours and costs. What was charged to it stays and keeps counting.' })
  async cancel(@CurrentActor() actor: Actor, @IdParam() id: string, @Body() body: ReasonBody): Promise<Reply<JobView>> {
    return this.answer(actor, await this.states.cancel(actor, id, body.reason));
  }

  private async answer(actor: Actor, job: JobEntity): Promise<Reply<JobView>> {
    return tagged(toJobView(actor, job, await this.jobs.planOf(actor, job.id)), job.version);
  }
}
