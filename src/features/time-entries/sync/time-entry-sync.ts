import { Injectable, type OnModuleInit } from '@nestjs/common';
import { SyncedKinds } from '../../../platform/sync/synced-kinds.js';
import { TimeEntryEntity } from '../time-entry.entity.js';
import { toTimeEntryView } from '../time-entry.mapper.js';

/** Hours on phones: everybody keeps their own, and who may log for others also those of the jobs whose crew they are on. */
@Injectable()
export class TimeEntrySync implements OnModuleInit {
  constructor(private readonly synced: SyncedKinds) {}

  onModuleInit(): void {
    this.synced.add({
      kind: 'time-entry',
      table: 'time_entry',
      entity: TimeEntryEntity,
      belongsTo: { jobs: 't.job_id' },
      own: { column: 'person_id', only: ['crew'] },
      view: (_actor, rows) => rows.map((row) => toTimeEntryView(row, null)),
    });
  }
}
