import { Injectable, type OnModuleInit } from '@nestjs/common';
import { SyncedKinds } from '../../../platform/sync/synced-kinds.js';
import { TimeEntryEntity } from '../time-entry.entity.js';
import { toTimeEntryView } from '../time-entry.mapper.js';

/** Hours on phones: crew keep their own, everybody else those of the jobs whose crew they are on. */
@Injectable()
export class TimeEntrySync implements OnModuleInit {
  constructor(private readonly synced: SyncedKinds) {}

  onModuleInit(): void {
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
