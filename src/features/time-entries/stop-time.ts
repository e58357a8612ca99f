import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { Clock } from '../../platform/clock/clock.js';
import { toInstant } from '../../platform/clock/device-time.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { stateConflict } from '../../platform/http/problems.js';
import { ChargeHours } from '../jobs/index.js';
import { heldBecause } from './held/held-because.js';
import { LockedPeriod } from './lock/locked-period.js';
import { overlapping } from './overlap-problems.js';
import { PaidPeople } from './paid-people.js';
import type { StopTimeBody } from './time-entries.dto.js';
import { requireMaySee } from './time-entries.policy.js';
import { TimeEntriesRepository } from './time-entries.repository.js';
import type { TimeEntryEntity } from './time-entry.entity.js';
import { changedBy } from './versions/changed-by.js';
import { workedTime } from './worked-time.js';

/** Ends running hours. They happened, so nothing refuses them for a finished job, a locked day or somebody who left: these hold them. */
@Injectable()
export class StopTime {
  constructor(
    private readonly db: TenantDatabase,
    private readonly entries: TimeEntriesRepository,
    private readonly people: PaidPeople,
    private readonly charge: ChargeHours,
    private readonly lockedPeriod: LockedPeriod,
    private readonly clock: Clock,
  ) {}

  /**
   * Repeated with the same end, or with none, it answers with the entry as it stands.
   * @throws Problem 404; 409 for a void entry, one that ended at another time, or when other hours of the person lie
   *   within; 400 for an end before the start or more than 24 hours after it
   */
  execute(actor: Actor, id: string, body: StopTimeBody): Promise<TimeEntryEntity> {
    return this.db.write(actor, async () => {
      const locked = await this.lockedPeriod.hold(actor);
      const row = await this.entries.store.lock(actor, id);
      requireMaySee(actor, row);
      if (row.voidedAt !== null) throw stateConflict('The entry is void and stays as it is. Log the hours anew.');
      if (row.endedAt !== null) return stoppedBefore(row, row.endedAt, body);
      const now = this.clock.now();
      const time = workedTime({
        startedAt: row.startedAt.toISOString(),
        endedAt: body.endedAt ?? now.toISOString(),
        unpaidBreakMinutes: body.unpaidBreakMinutes ?? row.unpaidBreakMinutes,
        breaks: body.breaks ?? [...row.breaks],
      });
      const [there] = await this.entries.inTheWay(actor, [{ ...row, ...time }]);
      if (there) throw overlapping(time, there, '/endedAt');
      const jobs = await this.charge.hold(actor, [row.jobId]);
      const held = heldBecause(locked, time, jobs.require(row.jobId), await this.people.find(actor, row.personId));
      if (held.length === 0) await this.charge.begin(actor, jobs, [row]);
      return this.entries.store.update(actor, id, row.version, { ...time, heldBecause: held, ...changedBy(actor, now, null) });
    });
  }
}

function stoppedBefore(row: TimeEntryEntity, endedAt: Date, body: StopTimeBody): TimeEntryEntity {
  if (!body.endedAt || toInstant(body.endedAt).getTime() === endedAt.getTime()) return row;
  throw stateConflict('The hours were stopped at another time. Correct the entry instead.', [{ pointer: '/endedAt', detail: `is ${endedAt.toISOString()} already` }]);
}
