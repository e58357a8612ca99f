import { Body, Controller, Query } from '@nestjs/common';
import { type Actor, EVERYONE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ActionRoute, ChangeRoute, CreateRoute, ListRoute, ReadRoute } from '../../platform/http/api.js';
import { IdParam } from '../../platform/http/id-param.js';
import { IfMatch } from '../../platform/http/if-match.js';
import type { Page } from '../../platform/http/lists.js';
import { made, type Reply, tagged } from '../../platform/http/reply.js';
import { ReasonBody } from '../jobs/index.js';
import { CorrectTime } from './correct-time.js';
import { LogTime } from './log/log-time.js';
import { TimeEntriesQuery, TimeEntryBody, TimeEntryCorrectionBody, TimeEntryView } from './time-entries.dto.js';
import { TimeEntriesService } from './time-entries.service.js';
import type { TimeEntryEntity } from './time-entry.entity.js';
import { TimeEntryViews } from './time-entry-views.js';

@Controller('v1/time-entries')
export class TimeEntriesController {
  constructor(
    private readonly entries: TimeEntriesService,
    private readonly logTime: LogTime,
    private readonly correct: CorrectTime,
    private readonly views: TimeEntryViews,
  ) {}

  @CreateRoute(TimeEntryView, {
    roles: EVERYONE, summary: 'Log hours', problems: ['time-overlap'],
    description: 'May be repeated safely with its id, so that a phone with a poor signal never logs an hour twice. The first hour starts a planned job. Nobody is in two places at once: overlapping hours of a person are refused. Without an end the hours run until they are stopped; they count for nothing till then. Hours for a locked day, or for a finished or cancelled job, are kept as `held`.',
  })
  async create(@CurrentActor() actor: Actor, @Body() body: TimeEntryBody): Promise<Reply<TimeEntryView>> {
    const { row, created } = await this.logTime.execute(actor, body);
    return made(await this.views.one(actor, row), row.version, created);
  }

  @ListRoute(TimeEntryView, { roles: EVERYONE, summary: 'List logged hours', description: 'Crew see their own. Voided entries are listed too.' })
  async list(@CurrentActor() actor: Actor, @Query() query: TimeEntriesQuery): Promise<Page<TimeEntryView>> {
    const { items, nextCursor } = await this.entries.list(actor, query);
    return { items: await this.views.of(actor, items), nextCursor };
  }

  @ReadRoute(TimeEntryView, { roles: EVERYONE, summary: 'Read a time entry' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<TimeEntryView>> {
    return this.answer(actor, await this.entries.find(actor, id));
  }

  @ChangeRoute(TimeEntryCorrectionBody, TimeEntryView, { roles: EVERYONE, summary: 'Correct a time entry', problems: ['time-overlap', 'period-locked'], description: 'Crew may correct their own, while the day is not locked. What was approved needs a reason, and approval anew; so does what counts on a finished or cancelled job, and hours that are moved to one, where they are `held`. The wage stays the one at entry, unless the person changes.' })
  async change(@CurrentActor() actor: Actor, @IdParam() id: string, @IfMatch() version: number, @Body() patch: unknown): Promise<Reply<TimeEntryView>> {
    return this.answer(actor, await this.correct.change(actor, id, version, patch));
  }

  @ActionRoute(TimeEntryView, { path: ':id/void', roles: EVERYONE, summary: 'Void a time entry', problems: ['period-locked'], description: 'It stays to be seen and counts for nothing. Crew may void their own, while the day is not locked.' })
  async void(@CurrentActor() actor: Actor, @IdParam() id: string, @Body() body: ReasonBody): Promise<Reply<TimeEntryView>> {
    return this.answer(actor, await this.correct.void(actor, id, body.reason));
  }

  private async answer(actor: Actor, row: TimeEntryEntity): Promise<Reply<TimeEntryView>> {
    return tagged(await this.views.one(actor, row), row.version);
  }
}
