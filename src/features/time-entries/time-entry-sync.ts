import { Injectable, type OnModuleInit } from '@nestjs/common';
import { EVERYONE } from '../../platform/auth/actor.js';
import { type Effect, MutationKinds } from '../../platform/sync/mutation-kinds.js';
import { SyncedKinds } from '../../platform/sync/synced-kinds.js';
import type { Made } from '../../platform/resources/resource-store.js';
import { LogManyHours } from './log/log-many-hours.js';
import { LogTime } from './log/log-time.js';
import { TimeEntryBody } from './time-entries.dto.js';
import { TimeEntryEntity } from './time-entry.entity.js';
import { toTimeEntryView } from './time-entry.mapper.js';

/** Hours on phones. */
@Injectable()
export class TimeEntrySync implements OnModuleInit {
  constructor(
    private readonly mutations: MutationKinds,
    private readonly synced: SyncedKinds,
    private readonly logTime: LogTime,
    private readonly many: LogManyHours,
  ) {}

  onModuleInit(): void {
    this.mutations.add({
      kind: 'time-entry.log',
      roles: EVERYONE,
      body: TimeEntryBody,
      apply: async (actor, { body, context }) => effectOf(await this.logTime.execute(actor, body, context)),
      applyMany: async (actor, mutations) => {
        const logged = await this.many.execute(actor, mutations.map(({ body, context }) => ({ body, receipt: context })));
        return logged.map((outcome) => (outcome instanceof Error ? outcome : effectOf(outcome)));
      },
    });
    this.synced.add({
      kind: 'time-entry',
      table: 'time_entry',
      entity: TimeEntryEntity,
      belongsTo: { jobs: 't.job_id' },
      ownOnly: { column: 'person_id', roles: ['crew'] },
      view: (_actor, rows) => rows.map((row) => toTimeEntryView(row, null)),
    });
  }
}

function effectOf({ row }: Made<TimeEntryEntity>): Effect {
  return { entity: 'time-entry', id: row.id, version: row.version };
}
