import { Body, Controller, Query } from '@nestjs/common';
import { type Actor, EVERYONE, seesMoney } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ActionRoute, ChangeRoute, CreateRoute, ListRoute, ReadRoute } from '../../platform/http/api.js';
import { IdParam } from '../../platform/http/id-param.js';
import { IfMatch } from '../../platform/http/if-match.js';
import { mapPage, type Page } from '../../platform/http/lists.js';
import { made, type Reply, tagged } from '../../platform/http/reply.js';
import { CompaniesService } from '../companies/index.js';
import { ReasonBody } from '../jobs/index.js';
import { CorrectTime } from './correct-time.js';
import { LogTime } from './log/log-time.js';
import { TimeEntriesQuery, TimeEntryBody, TimeEntryView } from './time-entries.dto.js';
import { TimeEntriesService } from './time-entries.service.js';
import type { TimeEntryEntity } from './time-entry.entity.js';
import { toTimeEntryView } from './time-entry.mapper.js';

@Controller('v1/time-entries')
export class TimeEntriesController {
  constructor(
    private readonly entries: TimeEntriesService,
    private readonly logTime: LogTime,
    private readonly correct: CorrectTime,
    private readonly companies: CompaniesService,
  ) {}

  @CreateRoute(TimeEntryView, {
    roles: EVERYONE, summary: 'Log hours', problems: ['time-overlap'],
    description: 'May be repeated safely with its id, so that a phone with a poor signal never logs an hour twice. The first hour starts a planned job. Nobody is in two places at once: overlapping hours of a person are refused.',
  })
  async create(@CurrentActor() actor: Actor, @Body() body: TimeEntryBody): Promise<Reply<TimeEntryView>> {
    const { row, created } = await this.logTime.execute(actor, body);
    return made(toTimeEntryView(row, await this.currency(actor)), row.version, created);
  }

  @ListRoute(TimeEntryView, { roles: EVERYONE, summary: 'List logged hours', description: 'Crew see their own. Voided entries are listed too.' })
  async list(@CurrentActor() actor: Actor, @Query() query: TimeEntriesQuery): Promise<Page<TimeEntryView>> {
    const currency = await this.currency(actor);
    return mapPage(await this.entries.list(actor, query), (row) => toTimeEntryView(row, currency));
  }

  @ReadRoute(TimeEntryView, { roles: EVERYONE, summary: 'Read a time entry' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<TimeEntryView>> {
    return this.answer(actor, await this.entries.find(actor, id));
  }

  @ChangeRoute(TimeEntryBody, TimeEntryView, { roles: EVERYONE, summary: 'Correct a time entry', problems: ['time-overlap'], description: 'Crew may correct their own, while the job is open. The wage stays the one at entry, unless the person changes.' })
  async change(@CurrentActor() actor: Actor, @IdParam() id: string, @IfMatch() version: number, @Body() patch: unknown): Promise<Reply<TimeEntryView>> {
    return this.answer(actor, await this.correct.change(actor, id, version, patch));
  }

  @ActionRoute(TimeEntryView, { path: ':id/void', roles: EVERYONE, summary: 'Void a time entry', description: 'It stays to be seen and counts for nothing. Crew may void their own, while the job is open.' })
  async void(@CurrentActor() actor: Actor, @IdParam() id: string, @Body() body: ReasonBody): Promise<Reply<TimeEntryView>> {
    return this.answer(actor, await this.correct.void(actor, id, body.reason));
  }

  private async answer(actor: Actor, row: TimeEntryEntity): Promise<Reply<TimeEntryView>> {
    return tagged(toTimeEntryView(row, await this.currency(actor)), row.version);
  }

  private async currency(actor: Actor): Promise<string | null> {
    return seesMoney(actor) ? (await this.companies.current(actor)).currency : null;
  }
}
