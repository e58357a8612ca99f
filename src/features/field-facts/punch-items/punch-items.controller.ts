import { Body, Controller, Query } from '@nestjs/common';
import { type Actor, EVERYONE } from '../../../platform/auth/actor.js';
import { CurrentActor } from '../../../platform/auth/allow.js';
import { ChangeRoute, CreateRoute, ListRoute, ReadRoute } from '../../../platform/http/api.js';
import { IdParam } from '../../../platform/http/id-param.js';
import { IfMatch } from '../../../platform/http/if-match.js';
import { mapPage, type Page } from '../../../platform/http/lists.js';
import { made, type Reply, tagged } from '../../../platform/http/reply.js';
import { PunchItemBody, PunchItemsQuery, PunchItemView } from './punch-item.dto.js';
import { toPunchItemView } from './punch-item.mapper.js';
import { PunchItemsService } from './punch-items.service.js';

@Controller('v1/punch-items')
export class PunchItemsController {
  constructor(private readonly items: PunchItemsService) {}

  @CreateRoute(PunchItemView, { roles: EVERYONE, summary: 'Add an item to the punch list' })
  async create(@CurrentActor() actor: Actor, @Body() body: PunchItemBody): Promise<Reply<PunchItemView>> {
    const { row, created } = await this.items.add(actor, body);
    return made(toPunchItemView(row), row.version, created);
  }

  @ListRoute(PunchItemView, { roles: EVERYONE, summary: 'List the punch-list items' })
  async list(@CurrentActor() actor: Actor, @Query() query: PunchItemsQuery): Promise<Page<PunchItemView>> {
    return mapPage(await this.items.list(actor, query), toPunchItemView);
  }

  @ReadRoute(PunchItemView, { roles: EVERYONE, summary: 'Read a punch-list item' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<PunchItemView>> {
    const row = await this.items.find(actor, id);
    return tagged(toPunchItemView(row), row.version);
  }

  @ChangeRoute(PunchItemBody, PunchItemView, { roles: EVERYONE, summary: 'Change a punch-list item', description: 'Done is a state: who set it and when is kept.' })
  async change(@CurrentActor() actor: Actor, @IdParam() id: string, @IfMatch() version: number, @Body() patch: unknown): Promise<Reply<PunchItemView>> {
    const row = await this.items.change(actor, id, version, patch);
    return tagged(toPunchItemView(row), row.version);
  }
}
