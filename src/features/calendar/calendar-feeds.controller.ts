import { Body, Controller, Query } from '@nestjs/common';
import { type Actor, EVERYONE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ActionRoute, CreateRoute, ListRoute } from '../../platform/http/api.js';
import { IdParam } from '../../platform/http/id-param.js';
import { ListQuery, mapPage, type Page } from '../../platform/http/lists.js';
import { made, type Reply, tagged } from '../../platform/http/reply.js';
import type { CalendarFeedEntity } from './calendar-feed.entity.js';
import { CalendarFeedBody, CalendarFeedView, NewCalendarFeedView } from './calendar-feeds.dto.js';
import { CalendarFeedsService } from './calendar-feeds.service.js';

@Controller('v1/calendar-feeds')
export class CalendarFeedsController {
  constructor(private readonly feeds: CalendarFeedsService) {}

  @CreateRoute(NewCalendarFeedView, { roles: EVERYONE, summary: 'Make a calendar feed of one\'s own visits', description: 'Its address is told once. One made on an enrolled device ends with the device.' })
  async create(@CurrentActor() actor: Actor, @Body() body: CalendarFeedBody): Promise<Reply<NewCalendarFeedView>> {
    const { row, token } = await this.feeds.create(actor, body);
    return made({ ...toView(row), path: token === null ? null : `/v1/calendar/${token}.ics` }, row.version, token !== null);
  }

  @ListRoute(CalendarFeedView, { roles: EVERYONE, summary: 'List calendar feeds', description: 'One\'s own; the owner sees everybody\'s.' })
  async list(@CurrentActor() actor: Actor, @Query() query: ListQuery): Promise<Page<CalendarFeedView>> {
    return mapPage(await this.feeds.list(actor, query), toView);
  }

  @ActionRoute(CalendarFeedView, { path: ':id/revoke', bodyless: true, roles: EVERYONE, summary: 'Revoke a calendar feed', description: 'Its address answers 404 from then on. One\'s own; the owner may revoke everybody\'s.' })
  async revoke(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<CalendarFeedView>> {
    const row = await this.feeds.revoke(actor, id);
    return tagged(toView(row), row.version);
  }
}

function toView(row: CalendarFeedEntity): CalendarFeedView {
  const { id, personId, name, deviceId } = row;
  return { id, personId, name, deviceId, revokedAt: row.revokedAt?.toISOString() ?? null, createdAt: row.createdAt.toISOString() };
}
