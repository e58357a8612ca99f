import { Injectable, type OnModuleInit } from '@nestjs/common';
import { SyncedKinds } from '../../platform/sync/synced-kinds.js';
import { JobEntity } from './job.entity.js';
import { toJobView } from './job.mapper.js';
import { JobsService } from './jobs.service.js';

/** Jobs on phones: those whose crew the person is on, without the contract's money. */
@Injectable()
export class JobSync implements OnModuleInit {
  constructor(
    private readonly kinds: SyncedKinds,
    private readonly jobs: JobsService,
  ) {}

  onModuleInit(): void {
    this.kinds.add({
      kind: 'job',
      table: 'job',
      entity: JobEntity,
      belongsTo: { jobs: 't.id' },
      view: async (actor, rows) => {
        const plans = await this.jobs.plansOf(actor, rows.map(({ id }) => id));
        return rows.map((row) => toJobView({ ...actor, role: 'crew' }, row, plans.get(row.id) ?? []));
      },
    });
  }
}
