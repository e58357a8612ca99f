import { Body, Controller, Query } from '@nestjs/common';
import { type Actor, EVERYONE } from '../../../platform/auth/actor.js';
import { CurrentActor } from '../../../platform/auth/allow.js';
import { ActionRoute, ChangeRoute, CreateRoute, ListRoute, ReadRoute } from '../../../platform/http/api.js';
import { IdParam } from '../../../platform/http/id-param.js';
import { IfMatch } from '../../../platform/http/if-match.js';
import { mapPage, type Page } from '../../../platform/http/lists.js';
import { patched } from '../../../platform/http/merge-patch.js';
import { made, type Reply, tagged } from '../../../platform/http/reply.js';
import type { DayOffEntity } from './day-off.entity.js';
import { toDaysOffBody, toDaysOffView } from './day-off.mapper.js';
import { DaysOffBody, DaysOffQuery, DaysOffView } from './days-off.dto.js';
import { DaysOffService } from './days-off.service.js';

@Controller('v1/days-off')
export class DaysOffController {
  constructor(private readonly daysOff: DaysOffService) {}

  @CreateRoute(DaysOffView, { roles: EVERYONE, summary: 'Enter days off', description: 'A visit planned on one of them is warned about.' })
  async create(@CurrentActor() actor: Actor, @Body() body: DaysOffBody): Promise<Reply<DaysOffView>> {
    const { row, created } = await this.daysOff.create(actor, body);
    return made(toDaysOffView(row), row.version, created);
  }

  @ListRoute(DaysOffView, { roles: EVERYONE, summary: 'List days off', description: 'Crew see their own. Withdrawn ones are listed too.' })
  async list(@CurrentActor() actor: Actor, @Query() query: DaysOffQuery): Promise<Page<DaysOffView>> {
    return mapPage(await this.daysOff.list(actor, query), toDaysOffView);
  }

  @ReadRoute(DaysOffView, { roles: EVERYONE, summary: 'Read days off' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<DaysOffView>> {
    return answer(await this.daysOff.find(actor, id));
  }

  @ChangeRoute(DaysOffBody, DaysOffView, { roles: EVERYONE, summary: 'Change days off' })
  async change(@CurrentActor() actor: Actor, @IdParam() id: string, @IfMatch() version: number, @Body() patch: unknown): Promise<Reply<DaysOffView>> {
    const current = await this.daysOff.find(actor, id);
    return answer(await this.daysOff.update(actor, id, version, await patched(DaysOffBody, toDaysOffBody(current), patch)));
  }

  @ActionRoute(DaysOffView, { path: ':id/withdraw', bodyless: true, roles: EVERYONE, summary: 'Withdraw days off', description: 'They stay to be seen and count for nothing.' })
  async withdraw(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<DaysOffView>> {
    return answer(await this.daysOff.withdraw(actor, id));
  }
}

function answer(row: DayOffEntity): Reply<DaysOffView> {
  return tagged(toDaysOffView(row), row.version);
}
