import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { Clock } from '../../../platform/clock/clock.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import { notPossible } from '../../../platform/http/problems.js';
import { CompaniesService } from '../../companies/index.js';
import { TimeLockEntity } from './time-lock.entity.js';

/** Locks days whose hours are settled, or opens them again. */
@Injectable()
export class MoveLock {
  constructor(
    private readonly db: TenantDatabase,
    private readonly companies: CompaniesService,
    private readonly clock: Clock,
  ) {}

  /** null when nobody ever locked a day. */
  current(actor: Actor): Promise<TimeLockEntity | null> {
    return this.db.read(actor, (manager) => manager.findOne(TimeLockEntity, { where: { companyId: actor.companyId } }));
  }

  /**
   * Waits for hours that are just being written, so that none slips into a day while it is locked. Held hours stay
   * held when their day opens: somebody must still look at them.
   * @throws Problem 422 at /lockedThrough for a day that is not over
   */
  execute(actor: Actor, lockedThrough: string | null): Promise<TimeLockEntity | null> {
    return this.db.write(actor, async (manager) => {
      const { timeZone } = await this.companies.current(actor);
      if (lockedThrough !== null && lockedThrough >= this.clock.today(timeZone)) {
        throw notPossible('Only days that are over can be locked: hours of the others are still to come.', [{ pointer: '/lockedThrough', detail: 'must be before today' }]);
      }
      await manager.query("SELECT pg_advisory_xact_lock(hashtextextended('time-lock ' || $1::uuid::text, 0))", [actor.companyId]);
      await manager.query(
        `INSERT INTO time_lock (company_id, locked_through, locked_by, locked_at) VALUES ($1, $2, $3, $4)
         ON CONFLICT ON CONSTRAINT pk_time_lock DO UPDATE
         SET locked_through = excluded.locked_through, locked_by = excluded.locked_by, locked_at = excluded.locked_at, version = time_lock.version + 1
         WHERE time_lock.locked_through IS DISTINCT FROM excluded.locked_through`,
        [actor.companyId, lockedThrough, actor.personId, this.clock.now()],
      );
      return this.current(actor);
    });
  }
}
