import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import { Problem } from '../../../platform/http/problem.js';

/** The days that are settled, as instants: everything that starts before `until` is. */
export class Locked {
  constructor(private readonly until: Date | null) {}

  holds({ startedAt }: { readonly startedAt: Date }): boolean {
    return this.until !== null && startedAt.getTime() < this.until.getTime();
  }

  /**
   * What counts in a locked day stays as it is; what is held there counts for nothing and may still be mended.
   * @throws Problem 409
   */
  requireOpen(entry: { readonly startedAt: Date; readonly held?: boolean }): void {
    if (entry.held === true || !this.holds(entry)) return;
    throw new Problem('period-locked', 'The day is locked, and its hours stay as they are. Ask the owner to open the day, then do it anew. Hours that are missing can be logged all the same, and count once the office releases them.', [{ pointer: '/startedAt', detail: 'lies in a locked day' }]);
  }
}

/** Asks which days are locked, and keeps the lock from moving until the transaction ends. */
@Injectable()
export class LockedPeriod {
  constructor(private readonly db: TenantDatabase) {}

  /** One statement. */
  hold(actor: Actor): Promise<Locked> {
    return this.db.write(actor, async (manager) => {
      const [row] = await manager.query<{ until: Date | null }[]>('SELECT hold_time_lock($1) AS until', [actor.companyId]);
      return new Locked(row?.until ?? null);
    });
  }
}
