import { Body, Controller, Query } from '@nestjs/common';
import { type Actor, OFFICE } from '../../../platform/auth/actor.js';
import { CurrentActor } from '../../../platform/auth/allow.js';
import { ChangeRoute, CreateRoute, ListRoute, ReadRoute } from '../../../platform/http/api.js';
import { IdParam } from '../../../platform/http/id-param.js';
import { IfMatch } from '../../../platform/http/if-match.js';
import { ListQuery, mapPage, type Page } from '../../../platform/http/lists.js';
import { patched } from '../../../platform/http/merge-patch.js';
import { made, type Reply, tagged } from '../../../platform/http/reply.js';
import { WorkWeekPolicyBody, WorkWeekPolicyView } from './work-week-policies.dto.js';
import { WorkWeekPoliciesService } from './work-week-policies.service.js';
import { toWorkWeekPolicyBody, toWorkWeekPolicyView } from './work-week-policy.mapper.js';

@Controller('v1/work-week-policies')
export class WorkWeekPoliciesController {
  constructor(private readonly policies: WorkWeekPoliciesService) {}

  @CreateRoute(WorkWeekPolicyView, { roles: ['owner'], summary: 'Set when workweeks begin and overtime is due', description: 'Labor cost and work weeks follow it from its date on. It supports payroll and replaces no advice: states and contracts have rules of their own.' })
  async create(@CurrentActor() actor: Actor, @Body() body: WorkWeekPolicyBody): Promise<Reply<WorkWeekPolicyView>> {
    const { row, created } = await this.policies.create(actor, body);
    return made(toWorkWeekPolicyView(row), row.version, created);
  }

  @ListRoute(WorkWeekPolicyView, { roles: OFFICE, summary: 'List the workweek policies' })
  async list(@CurrentActor() actor: Actor, @Query() query: ListQuery): Promise<Page<WorkWeekPolicyView>> {
    return mapPage(await this.policies.list(actor, query), toWorkWeekPolicyView);
  }

  @ReadRoute(WorkWeekPolicyView, { roles: OFFICE, summary: 'Read a workweek policy' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<WorkWeekPolicyView>> {
    const row = await this.policies.find(actor, id);
    return tagged(toWorkWeekPolicyView(row), row.version);
  }

  @ChangeRoute(WorkWeekPolicyBody, WorkWeekPolicyView, { roles: ['owner'], summary: 'Change a workweek policy', description: 'For a mistake: the labor cost of past weeks follows. For new hours, make a new policy with its own `effectiveFrom`.' })
  async change(@CurrentActor() actor: Actor, @IdParam() id: string, @IfMatch() version: number, @Body() patch: unknown): Promise<Reply<WorkWeekPolicyView>> {
    const current = await this.policies.find(actor, id);
    const row = await this.policies.update(actor, id, version, await patched(WorkWeekPolicyBody, toWorkWeekPolicyBody(current), patch));
    return tagged(toWorkWeekPolicyView(row), row.version);
  }
}
