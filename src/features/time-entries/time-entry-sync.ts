import { Injectable, type OnModuleInit } from '@nestjs/common';
import { EVERYONE } from '../../platform/auth/actor.js';
import { MutationKinds } from '../../platform/sync/mutation-kinds.js';
import { SyncedKinds } from '../../platform/sync/synced-kinds.js';
import { LogTime } from './log-time.js';
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
  ) {}

  onModuleInit(): void {
    this.mutations.add({
      kind: 'time-entry.log',
      roles: EVERYONE,
      body: TimeEntryBody,
      apply: async (actor, { body }) => {
        const { row } = await this.logTime.execute(actor, body);
        return { entity: 'time-entry', id: row.id, version: row.version };
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
