import { Injectable, type OnModuleInit } from '@nestjs/common';
import { SyncedKinds } from '../../platform/sync/synced-kinds.js';
import { PersonEntity } from './person.entity.js';
import { toPersonView } from './person.mapper.js';

/** People on phones: everybody of the company, by name and role, without addresses and wages. */
@Injectable()
export class PersonSync implements OnModuleInit {
  constructor(private readonly kinds: SyncedKinds) {}

  onModuleInit(): void {
    this.kinds.add({
      kind: 'person',
      table: 'person',
      entity: PersonEntity,
      belongsTo: 'company',
      view: (actor, rows) => rows.map((row) => toPersonView({ ...actor, role: 'crew' }, row)),
    });
  }
}
