import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import type { Made } from '../../platform/resources/resource-store.js';
import { ChargeJob } from '../jobs/index.js';
import { PaidPeople } from './paid-people.js';
import type { TimeEntryBody } from './time-entries.dto.js';
import { requireMayLogFor } from './time-entries.policy.js';
import { TimeEntriesRepository } from './time-entries.repository.js';
import type { TimeEntryEntity } from './time-entry.entity.js';
import { workedTime } from './worked-time.js';

/** Logs hours, once however often the phone sends them. */
@Injectable()
export class LogTime {
  constructor(
    private readonly db: TenantDatabase,
    private readonly entries: TimeEntriesRepository,
    private readonly people: PaidPeople,
    private readonly charge: ChargeJob,
  ) {}

  /**
   * @throws Problem 400, 403 or 422 with the field, 409 when the job is closed, the person is logged elsewhere at that
   *   time, or the id was used with another body
   */
  async execute(actor: Actor, body: TimeEntryBody): Promise<Made<TimeEntryEntity>> {
    requireMayLogFor(actor, body.personId);
    const span = workedTime(body);
    return this.db.write(actor, async () => {
      // Before all else: a phone may repeat an hour whose job was finished, or whose person left, in the meantime.
      const before = await this.entries.store.madeBefore(actor, body);
      if (before !== null) return { row: before, created: false };
      const person = await this.people.find(actor, body.personId);
      const { jobId, costCode, note } = body;
      await this.charge.withHours(actor, { jobId, costCode, startedAt: span.startedAt });
      return this.entries.store.create(actor, body, { jobId, costCode, note: note ?? null, ...person, ...span, recordedBy: actor.personId ?? person.personId });
    });
  }
}
