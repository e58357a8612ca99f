import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { Clock } from '../../platform/clock/clock.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { stateConflict } from '../../platform/http/problems.js';
import { TimeEntriesRepository } from './time-entries.repository.js';
import type { TimeEntryEntity } from './time-entry.entity.js';
import { changedBy } from './versions/changed-by.js';

/** Lets hours count that came in for a locked day. Somebody decides that, by name: it changes what was settled. */
@Injectable()
export class ReleaseHeld {
  constructor(
    private readonly db: TenantDatabase,
    private readonly entries: TimeEntriesRepository,
    private readonly clock: Clock,
  ) {}

  /** Hours that are not held are answered as they stand. @throws Problem 404, 409 for a void entry */
  execute(actor: Actor, id: string): Promise<TimeEntryEntity> {
    return this.db.write(actor, async () => {
      const row = await this.entries.store.lock(actor, id);
      if (row.voidedAt !== null) throw stateConflict('The entry is void and stays as it is. Log the hours anew.');
      if (!row.held) return row;
      return this.entries.store.update(actor, id, row.version, { held: false, ...changedBy(actor, this.clock.now(), null) });
    });
  }
}
