import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { Clock } from '../../../platform/clock/clock.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import { stateConflict } from '../../../platform/http/problems.js';
import { ChargeHours } from '../../jobs/index.js';
import { TimeEntriesRepository } from '../time-entries.repository.js';
import type { TimeEntryEntity } from '../time-entry.entity.js';
import { changedBy } from '../versions/changed-by.js';

/** Lets held hours count. Somebody decides that, by name: it changes figures that others have already worked with. */
@Injectable()
export class ReleaseHeld {
  constructor(
    private readonly db: TenantDatabase,
    private readonly entries: TimeEntriesRepository,
    private readonly charge: ChargeHours,
    private readonly clock: Clock,
  ) {}

  /** Hours that are not held are answered as they stand. @throws Problem 404, 409 for a void entry or hours that run */
  execute(actor: Actor, id: string): Promise<TimeEntryEntity> {
    return this.db.write(actor, async () => {
      const row = await this.entries.store.lock(actor, id);
      if (row.voidedAt !== null) throw stateConflict('The entry is void and stays as it is. Log the hours anew.');
      if (!row.held) return row;
      // They are judged when they end, and would be held again.
      if (row.endedAt === null) throw stateConflict('The hours still run. Stop them first, then release them.');
      await this.charge.begin(actor, await this.charge.hold(actor, [row.jobId]), [row]);
      return this.entries.store.update(actor, id, row.version, { heldBecause: [], ...changedBy(actor, this.clock.now(), null) });
    });
  }
}
