import { Injectable, type OnModuleInit } from '@nestjs/common';
import { EVERYONE } from '../../../platform/auth/actor.js';
import { requireBaseRevision } from '../../../platform/sync/base-revision.js';
import { type Effect, MutationKinds } from '../../../platform/sync/mutation-kinds.js';
import { CorrectTime } from '../correct-time.js';
import { LogManyHours } from '../log/log-many-hours.js';
import { LogTime } from '../log/log-time.js';
import { StopTime } from '../stop-time.js';
import { TimeEntryBody, TimeEntryStartBody } from '../time-entries.dto.js';
import type { TimeEntryEntity } from '../time-entry.entity.js';
import { CorrectTimeMutation, StopTimeMutation, VoidTimeMutation } from './time-mutations.dto.js';

/** What phones push of hours: logged, started and stopped as facts; corrected and voided at a version. */
@Injectable()
export class TimeMutations implements OnModuleInit {
  constructor(
    private readonly kinds: MutationKinds,
    private readonly logTime: LogTime,
    private readonly many: LogManyHours,
    private readonly stopTime: StopTime,
    private readonly correct: CorrectTime,
  ) {}

  onModuleInit(): void {
    this.addFacts();
    this.addChanges();
  }

  private addFacts(): void {
    this.kinds.add({
      kind: 'time-entry.log',
      roles: EVERYONE,
      body: TimeEntryBody,
      apply: async (actor, { body, context }) => effectOf((await this.logTime.execute(actor, body, context)).row),
      applyMany: async (actor, mutations) => {
        const logged = await this.many.execute(actor, mutations.map(({ body, context }) => ({ body, receipt: context })));
        return logged.map((outcome) => (outcome instanceof Error ? outcome : effectOf(outcome.row)));
      },
    });
    this.kinds.add({
      kind: 'time-entry.start',
      roles: EVERYONE,
      body: TimeEntryStartBody,
      apply: async (actor, { body, context }) => effectOf((await this.logTime.execute(actor, body, context)).row),
    });
    this.kinds.add({
      kind: 'time-entry.stop',
      roles: EVERYONE,
      body: StopTimeMutation,
      apply: async (actor, { body: { id, ...body }, context }) =>
        effectOf(await this.stopTime.execute(actor, id, { ...body, endedAt: body.endedAt ?? context.recordedAt.toISOString() })),
    });
  }

  private addChanges(): void {
    this.kinds.add({
      kind: 'time-entry.correct',
      roles: EVERYONE,
      body: CorrectTimeMutation,
      apply: async (actor, { body: { id, ...patch }, context }) => effectOf(await this.correct.change(actor, id, requireBaseRevision(context), patch)),
    });
    this.kinds.add({
      kind: 'time-entry.void',
      roles: EVERYONE,
      body: VoidTimeMutation,
      apply: async (actor, { body, context }) => effectOf(await this.correct.void(actor, body.id, body.reason, context.baseRevision)),
    });
  }
}

function effectOf({ id, version }: TimeEntryEntity): Effect {
  return { entity: 'time-entry', id, version };
}
