import { Body, Controller, Query } from '@nestjs/common';
import { type Actor, EVERYONE, LEADS } from '../../../platform/auth/actor.js';
import { CurrentActor } from '../../../platform/auth/allow.js';
import { ActionRoute, ChangeRoute, CreateRoute, ListRoute, ReadRoute } from '../../../platform/http/api.js';
import { IdParam } from '../../../platform/http/id-param.js';
import { IfMatch } from '../../../platform/http/if-match.js';
import type { Page } from '../../../platform/http/lists.js';
import { made, type Reply, taggedBySaying } from '../../../platform/http/reply.js';
import { ReasonBody } from '../../jobs/index.js';
import { PlanVisits } from './plan-visits.js';
import type { VisitEntity } from './visit.entity.js';
import { VisitBody, VisitsQuery } from './visits.dto.js';
import { VisitsService } from './visits.service.js';
import { VisitView } from './visits.view.js';

@Controller('v1/visits')
export class VisitsController {
  constructor(
    private readonly visits: VisitsService,
    private readonly plan: PlanVisits,
  ) {}

  @CreateRoute(VisitView, { roles: LEADS, summary: 'Plan a visit', description: 'Who comes joins the crew of the job. What speaks against the visit (somebody planned elsewhere or off that day, a permit or a locate that is outstanding) is told in `warnings` and never refused.' })
  async create(@CurrentActor() actor: Actor, @Body() body: VisitBody): Promise<Reply<VisitView>> {
    const { row, created } = await this.plan.create(actor, body);
    return made(await this.visits.withWarning(actor, row), row.version, created);
  }

  @ListRoute(VisitView, { roles: EVERYONE, summary: 'List the visits', description: 'Cancelled ones too. The one planned last comes first, whatever its day.' })
  list(@CurrentActor() actor: Actor, @Query() query: VisitsQuery): Promise<Page<VisitView>> {
    return this.visits.list(actor, query);
  }

  @ReadRoute(VisitView, { roles: EVERYONE, summary: 'Read a visit', description: 'The ETag is that of all it says: it changes with the warnings too. In If-Match it counts for the visit alone.' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<VisitView>> {
    return this.answer(actor, await this.visits.find(actor, id));
  }

  @ChangeRoute(VisitBody, VisitView, { roles: LEADS, summary: 'Change a visit', description: 'Calendars show the change at the same event.' })
  async change(@CurrentActor() actor: Actor, @IdParam() id: string, @IfMatch() version: number, @Body() patch: unknown): Promise<Reply<VisitView>> {
    return this.answer(actor, await this.plan.change(actor, id, version, patch));
  }

  @ActionRoute(VisitView, { path: ':id/cancel', roles: LEADS, summary: 'Cancel a visit', description: 'It stays to be seen, and calendars show it as cancelled.' })
  async cancel(@CurrentActor() actor: Actor, @IdParam() id: string, @Body() body: ReasonBody): Promise<Reply<VisitView>> {
    return this.answer(actor, await this.plan.cancel(actor, id, body.reason));
  }

  @ActionRoute(VisitView, { path: ':id/restore', bodyless: true, roles: LEADS, summary: 'Restore a cancelled visit' })
  async restore(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<VisitView>> {
    return this.answer(actor, await this.plan.restore(actor, id));
  }

  private async answer(actor: Actor, row: VisitEntity): Promise<Reply<VisitView>> {
    return taggedBySaying(await this.visits.withWarning(actor, row), row.version);
  }
}
