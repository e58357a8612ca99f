import { Injectable, type OnModuleInit } from '@nestjs/common';
import { SyncedKinds } from '../../platform/sync/synced-kinds.js';
import { SiteEntity } from './site.entity.js';
import { toSiteView } from './site.mapper.js';

/** Sites on phones: those of the jobs whose crew the person is on. */
@Injectable()
export class SiteSync implements OnModuleInit {
  constructor(private readonly kinds: SyncedKinds) {}

  onModuleInit(): void {
    this.kinds.add({
      kind: 'site',
      table: 'site',
      entity: SiteEntity,
      belongsTo: {
        jobs: 'SELECT job.id FROM job WHERE job.company_id = t.company_id AND job.site_id = t.id',
        rowsOf: (job) => `t.id = (SELECT job.site_id FROM job WHERE job.id = ${job})`,
      },
      view: (_actor, rows) => rows.map(toSiteView),
    });
  }
}
