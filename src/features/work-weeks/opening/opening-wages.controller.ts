import { Body, Controller, Query } from '@nestjs/common';
import { type Actor, OFFICE } from '../../../platform/auth/actor.js';
import { CurrentActor } from '../../../platform/auth/allow.js';
import { ChangeRoute, CreateRoute, ListRoute, ReadRoute } from '../../../platform/http/api.js';
import { IdParam } from '../../../platform/http/id-param.js';
import { IfMatch } from '../../../platform/http/if-match.js';
import { mapPage, type Page } from '../../../platform/http/lists.js';
import { patched } from '../../../platform/http/merge-patch.js';
import { made, type Reply, tagged } from '../../../platform/http/reply.js';
import { OpeningWagesBody, OpeningWagesQuery, OpeningWagesView } from './opening-wages.dto.js';
import { toOpeningWagesBody, toOpeningWagesView } from './opening-wages.mapper.js';
import { OpeningWagesService } from './opening-wages.service.js';

@Controller('v1/opening-wages')
export class OpeningWagesController {
  constructor(private readonly opening: OpeningWagesService) {}

  @CreateRoute(OpeningWagesView, { roles: ['owner'], summary: 'Enter what a person had earned before', description: 'For a year that began before the company kept its hours here: without it, yearly caps of burden would start at nothing and labor would look dearer than it is.' })
  async create(@CurrentActor() actor: Actor, @Body() body: OpeningWagesBody): Promise<Reply<OpeningWagesView>> {
    const { row, created } = await this.opening.create(actor, body);
    return made(toOpeningWagesView(row), row.version, created);
  }

  @ListRoute(OpeningWagesView, { roles: OFFICE, summary: 'List what people had earned before' })
  async list(@CurrentActor() actor: Actor, @Query() query: OpeningWagesQuery): Promise<Page<OpeningWagesView>> {
    return mapPage(await this.opening.list(actor, query), toOpeningWagesView);
  }

  @ReadRoute(OpeningWagesView, { roles: OFFICE, summary: 'Read what a person had earned before' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<OpeningWagesView>> {
    const row = await this.opening.find(actor, id);
    return tagged(toOpeningWagesView(row), row.version);
  }

  @ChangeRoute(OpeningWagesBody, OpeningWagesView, { roles: ['owner'], summary: 'Change what a person had earned before', description: 'The burden of the year\'s weeks follows. To take it back, set `allPay` to 0.' })
  async change(@CurrentActor() actor: Actor, @IdParam() id: string, @IfMatch() version: number, @Body() patch: unknown): Promise<Reply<OpeningWagesView>> {
    const current = await this.opening.find(actor, id);
    const row = await this.opening.update(actor, id, version, await patched(OpeningWagesBody, toOpeningWagesBody(current), patch));
    return tagged(toOpeningWagesView(row), row.version);
  }
}
