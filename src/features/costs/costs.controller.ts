import { Body, Controller, Query } from '@nestjs/common';
import { type Actor, OFFICE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ActionRoute, ChangeRoute, CreateRoute, ListRoute, ReadRoute } from '../../platform/http/api.js';
import { IdParam } from '../../platform/http/id-param.js';
import { IfMatch } from '../../platform/http/if-match.js';
import { mapPage, type Page } from '../../platform/http/lists.js';
import { made, type Reply, tagged } from '../../platform/http/reply.js';
import { ReasonBody } from '../jobs/index.js';
import { toCostView } from './cost.mapper.js';
import { CostBody, CostsQuery, CostView } from './costs.dto.js';
import { CostsService } from './costs.service.js';

@Controller('v1/costs')
export class CostsController {
  constructor(private readonly costs: CostsService) {}

  @CreateRoute(CostView, { roles: OFFICE, summary: 'Enter a cost', description: 'A finished job still takes suppliers\' late bills; a cancelled one takes none.' })
  async create(@CurrentActor() actor: Actor, @Body() body: CostBody): Promise<Reply<CostView>> {
    const { row, created } = await this.costs.create(actor, body);
    return made(toCostView(row), row.version, created);
  }

  @ListRoute(CostView, { roles: OFFICE, summary: 'List the costs', description: 'Voided ones are listed too.' })
  async list(@CurrentActor() actor: Actor, @Query() query: CostsQuery): Promise<Page<CostView>> {
    return mapPage(await this.costs.list(actor, query), toCostView);
  }

  @ReadRoute(CostView, { roles: OFFICE, summary: 'Read a cost' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<CostView>> {
    const row = await this.costs.find(actor, id);
    return tagged(toCostView(row), row.version);
  }

  @ChangeRoute(CostBody, CostView, { roles: OFFICE, summary: 'Change a cost' })
  async change(@CurrentActor() actor: Actor, @IdParam() id: string, @IfMatch() version: number, @Body() patch: unknown): Promise<Reply<CostView>> {
    const row = await this.costs.change(actor, id, version, patch);
    return tagged(toCostView(row), row.version);
  }

  @ActionRoute(CostView, { path: ':id/void', roles: OFFICE, summary: 'Void a cost', description: 'It stays to be seen and counts for nothing.' })
  async void(@CurrentActor() actor: Actor, @IdParam() id: string, @Body() body: ReasonBody): Promise<Reply<CostView>> {
    const row = await this.costs.void(actor, id, body.reason);
    return tagged(toCostView(row), row.version);
  }
}
