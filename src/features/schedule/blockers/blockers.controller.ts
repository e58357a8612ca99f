import { Body, Controller, Query } from '@nestjs/common';
import { type Actor, EVERYONE, LEADS } from '../../../platform/auth/actor.js';
import { CurrentActor } from '../../../platform/auth/allow.js';
import { ActionRoute, ChangeRoute, CreateRoute, ListRoute, ReadRoute } from '../../../platform/http/api.js';
import { IdParam } from '../../../platform/http/id-param.js';
import { IfMatch } from '../../../platform/http/if-match.js';
import { mapPage, type Page } from '../../../platform/http/lists.js';
import { patched } from '../../../platform/http/merge-patch.js';
import { made, type Reply, tagged } from '../../../platform/http/reply.js';
import type { BlockerEntity } from './blocker.entity.js';
import { toBlockerBody, toBlockerView } from './blocker.mapper.js';
import { BlockerBody, BlockersQuery, BlockerView } from './blockers.dto.js';
import { BlockersService } from './blockers.service.js';

@Controller('v1/blockers')
export class BlockersController {
  constructor(private readonly blockers: BlockersService) {}

  @CreateRoute(BlockerView, { roles: LEADS, summary: 'Enter what must come before the work', description: 'A locate of buried utilities, a permit, materials on order. Visits before it is out of the way are warned about. Call before you dig; local law decides what that takes.' })
  async create(@CurrentActor() actor: Actor, @Body() body: BlockerBody): Promise<Reply<BlockerView>> {
    const { row, created } = await this.blockers.create(actor, body);
    return made(toBlockerView(row), row.version, created);
  }

  @ListRoute(BlockerView, { roles: EVERYONE, summary: 'List the blockers', description: 'Cleared and withdrawn ones too.' })
  async list(@CurrentActor() actor: Actor, @Query() query: BlockersQuery): Promise<Page<BlockerView>> {
    return mapPage(await this.blockers.list(actor, query), toBlockerView);
  }

  @ReadRoute(BlockerView, { roles: EVERYONE, summary: 'Read a blocker' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<BlockerView>> {
    return answer(await this.blockers.find(actor, id));
  }

  @ChangeRoute(BlockerBody, BlockerView, { roles: LEADS, summary: 'Change a blocker', description: 'Such as to say that it is out of the way: `clearedOn`.' })
  async change(@CurrentActor() actor: Actor, @IdParam() id: string, @IfMatch() version: number, @Body() patch: unknown): Promise<Reply<BlockerView>> {
    const current = await this.blockers.find(actor, id);
    return answer(await this.blockers.update(actor, id, version, await patched(BlockerBody, toBlockerBody(current), patch)));
  }

  @ActionRoute(BlockerView, { path: ':id/withdraw', bodyless: true, roles: LEADS, summary: 'Withdraw a blocker', description: 'One that was entered by mistake or is not needed any more. It stays to be seen and holds up nothing.' })
  async withdraw(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<BlockerView>> {
    return answer(await this.blockers.withdraw(actor, id));
  }
}

function answer(row: BlockerEntity): Reply<BlockerView> {
  return tagged(toBlockerView(row), row.version);
}
