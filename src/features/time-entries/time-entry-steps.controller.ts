import { Body, Controller } from '@nestjs/common';
import { type Actor, EVERYONE, OFFICE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ActionRoute, ReadRoute } from '../../platform/http/api.js';
import { IdParam } from '../../platform/http/id-param.js';
import { toProblem } from '../../platform/http/problem.filter.js';
import { problemBody } from '../../platform/http/problem.js';
import { type Reply, tagged } from '../../platform/http/reply.js';
import { ReleaseHeld } from './held/release-held.js';
import { TimeEntryBatchBody, TimeEntryOutcomesView, type TimeEntryOutcomeView } from './log/batch.dto.js';
import { LogBatch } from './log/log-batch.js';
import type { Logged } from './log/log-many-hours.js';
import { StopTime } from './stop-time.js';
import { StopTimeBody, TimeEntryView } from './time-entries.dto.js';
import type { TimeEntryEntity } from './time-entry.entity.js';
import { TimeEntryViews } from './time-entry-views.js';
import { EntryVersions } from './versions/entry-versions.js';
import { TimeEntryVersionsView } from './versions/versions.dto.js';

const BATCH = '/v1/time-entries/batch';

/** What happens to hours beside being logged and corrected one by one. */
@Controller('v1/time-entries')
export class TimeEntryStepsController {
  constructor(
    private readonly logBatch: LogBatch,
    private readonly stopTime: StopTime,
    private readonly releaseHeld: ReleaseHeld,
    private readonly entryVersions: EntryVersions,
    private readonly views: TimeEntryViews,
  ) {}

  @ActionRoute(TimeEntryOutcomesView, {
    path: 'batch', roles: EVERYONE, summary: 'Log up to 500 hours at once',
    description: 'Of one person or, by a crew lead, of several. Each item has an outcome of its own; a refused one touches no other. With their ids the items may be repeated safely.',
  })
  async batch(@CurrentActor() actor: Actor, @Body() body: TimeEntryBatchBody): Promise<TimeEntryOutcomesView> {
    const logged = await this.logBatch.execute(actor, body);
    const rows = logged.flatMap((outcome) => (outcome instanceof Error ? [] : [outcome.row]));
    const views = await this.views.of(actor, rows);
    const byId = new Map(views.map((view) => [view.id, view]));
    return { items: logged.map((outcome) => outcomeView(outcome, byId)) };
  }

  @ActionRoute(TimeEntryView, { path: ':id/stop', roles: EVERYONE, summary: 'Stop running hours', problems: ['time-overlap'], description: 'Also when the job was finished or cancelled or the day was locked in the meantime: the hours happened, and are kept as `held`. May be repeated.' })
  async stop(@CurrentActor() actor: Actor, @IdParam() id: string, @Body() body: StopTimeBody): Promise<Reply<TimeEntryView>> {
    return this.answer(actor, await this.stopTime.execute(actor, id, body));
  }

  @ActionRoute(TimeEntryView, { path: ':id/release', roles: OFFICE, bodyless: true, summary: 'Let held hours count', description: 'Hours that came in for a locked day, or for a finished or cancelled job, are held; released, they count on their day and job, which stay as they are.' })
  async release(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<TimeEntryView>> {
    return this.answer(actor, await this.releaseHeld.execute(actor, id));
  }

  @ReadRoute(TimeEntryVersionsView, { path: ':id/versions', roles: EVERYONE, summary: 'Every version of a time entry', description: 'Who changed it, when and why; newest first.' })
  async versions(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<TimeEntryVersionsView> {
    return { items: await this.entryVersions.of(actor, id) };
  }

  private async answer(actor: Actor, row: TimeEntryEntity): Promise<Reply<TimeEntryView>> {
    return tagged(await this.views.one(actor, row), row.version);
  }
}

function outcomeView(outcome: Logged, views: ReadonlyMap<string, TimeEntryView>): TimeEntryOutcomeView {
  if (outcome instanceof Error) {
    const problem = toProblem(outcome);
    return { outcome: 'refused', problem: { ...problemBody(problem, BATCH), errors: [...problem.errors] } };
  }
  const entry = views.get(outcome.row.id);
  return { outcome: outcome.created ? 'made' : 'repeated', ...(entry === undefined ? {} : { entry }) };
}
