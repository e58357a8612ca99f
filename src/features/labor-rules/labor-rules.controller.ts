import { Body, Controller, Query } from '@nestjs/common';
import { type Actor, OFFICE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ChangeRoute, CreateRoute, ListRoute, ReadRoute } from '../../platform/http/api.js';
import { IdParam } from '../../platform/http/id-param.js';
import { IfMatch } from '../../platform/http/if-match.js';
import { mapPage, type Page } from '../../platform/http/lists.js';
import { patched } from '../../platform/http/merge-patch.js';
import { made, type Reply, tagged } from '../../platform/http/reply.js';
import { toLaborRuleBody, toLaborRuleView } from './labor-rule.mapper.js';
import { LaborRuleBody, LaborRuleListQuery, LaborRuleView } from './labor-rules.dto.js';
import { LaborRulesService } from './labor-rules.service.js';

@Controller('v1/labor-rules')
export class LaborRulesController {
  constructor(private readonly rules: LaborRulesService) {}

  @CreateRoute(LaborRuleView, { roles: OFFICE, summary: 'Make a labor rule' })
  async create(@CurrentActor() actor: Actor, @Body() body: LaborRuleBody): Promise<Reply<LaborRuleView>> {
    const { row, created } = await this.rules.create(actor, body);
    return made(toLaborRuleView(row), row.version, created);
  }

  @ListRoute(LaborRuleView, { roles: OFFICE, summary: 'List the labor rules' })
  async list(@CurrentActor() actor: Actor, @Query() query: LaborRuleListQuery): Promise<Page<LaborRuleView>> {
    return mapPage(await this.rules.list(actor, query), toLaborRuleView);
  }

  @ReadRoute(LaborRuleView, { roles: OFFICE, summary: 'Read a labor rule' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<LaborRuleView>> {
    const row = await this.rules.find(actor, id);
    return tagged(toLaborRuleView(row), row.version);
  }

  @ChangeRoute(LaborRuleBody, LaborRuleView, { roles: OFFICE, summary: 'Change a labor rule', description: 'For a mistake. When the work has come to take longer or shorter, make a new rule with its own `effectiveFrom`: older surveys then keep the old one. What was issued stays as it is in both cases.' })
  async change(@CurrentActor() actor: Actor, @IdParam() id: string, @IfMatch() version: number, @Body() patch: unknown): Promise<Reply<LaborRuleView>> {
    const current = await this.rules.find(actor, id);
    const row = await this.rules.update(actor, id, version, await patched(LaborRuleBody, toLaborRuleBody(current), patch));
    return tagged(toLaborRuleView(row), row.version);
  }
}
