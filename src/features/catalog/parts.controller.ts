import { Body, Controller, Query } from '@nestjs/common';
import { type Actor, OFFICE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ChangeRoute, CreateRoute, ListRoute, ReadRoute } from '../../platform/http/api.js';
import { IdParam } from '../../platform/http/id-param.js';
import { IfMatch } from '../../platform/http/if-match.js';
import { ListQuery, mapPage, type Page } from '../../platform/http/lists.js';
import { patched } from '../../platform/http/merge-patch.js';
import { made, type Reply, tagged } from '../../platform/http/reply.js';
import { toPartBody, toPartCostView, toPartView } from './part.mapper.js';
import { PartBody, PartCostView, PartListQuery, PartView } from './parts.dto.js';
import { PartsService } from './parts.service.js';

@Controller('v1/parts')
export class PartsController {
  constructor(private readonly parts: PartsService) {}

  @CreateRoute(PartView, { roles: OFFICE, summary: 'Enter a part in the catalog' })
  async create(@CurrentActor() actor: Actor, @Body() body: PartBody): Promise<Reply<PartView>> {
    const { row, created } = await this.parts.create(actor, body);
    return made(toPartView(row), row.version, created);
  }

  @ListRoute(PartView, { roles: OFFICE, summary: 'List the parts' })
  async list(@CurrentActor() actor: Actor, @Query() query: PartListQuery): Promise<Page<PartView>> {
    return mapPage(await this.parts.list(actor, query), toPartView);
  }

  @ReadRoute(PartView, { roles: OFFICE, summary: 'Read a part' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<PartView>> {
    const row = await this.parts.find(actor, id);
    return tagged(toPartView(row), row.version);
  }

  @ChangeRoute(PartBody, PartView, { roles: OFFICE, summary: 'Change a part', description: 'A new cost is noted in the cost history. Drafts take it up when they are priced again; what was issued stays as it is. Attributes are merged too: to give a part another kind, set the attributes of the old kind to null.' })
  async change(@CurrentActor() actor: Actor, @IdParam() id: string, @IfMatch() version: number, @Body() patch: unknown): Promise<Reply<PartView>> {
    const current = await this.parts.find(actor, id);
    const row = await this.parts.update(actor, id, version, await patched(PartBody, toPartBody(current), patch));
    return tagged(toPartView(row), row.version);
  }

  @ListRoute(PartCostView, { path: ':id/costs', roles: OFFICE, summary: 'List what a part cost over time' })
  async listCosts(@CurrentActor() actor: Actor, @IdParam() id: string, @Query() query: ListQuery): Promise<Page<PartCostView>> {
    return mapPage(await this.parts.listCosts(actor, id, query), toPartCostView);
  }
}
