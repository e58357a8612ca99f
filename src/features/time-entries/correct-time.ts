import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { Clock } from '../../platform/clock/clock.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { patched } from '../../platform/http/merge-patch.js';
import { staleVersion, stateConflict } from '../../platform/http/problems.js';
import { ChargeJob } from '../jobs/index.js';
import { PaidPeople } from './paid-people.js';
import { TimeEntryBody } from './time-entries.dto.js';
import { requireMayLogFor, requireMaySee } from './time-entries.policy.js';
import { TimeEntriesRepository } from './time-entries.repository.js';
import type { TimeEntryEntity } from './time-entry.entity.js';
import { toTimeEntryBody } from './time-entry.mapper.js';
import { workedTime } from './worked-time.js';

/** Mends logged hours while their job is open: changes them, or voids them with a reason. */
@Injectable()
export class CorrectTime {
  constructor(
    private readonly db: TenantDatabase,
    private readonly entries: TimeEntriesRepository,
    private readonly people: PaidPeople,
    private readonly charge: ChargeJob,
    private readonly clock: Clock,
  ) {}

  /**
   * Applies a merge patch. The wage stays the one of the first entry, unless the hours turn out to be somebody else's.
   * @throws Problem as logging does, and 409 for a voided entry, 412 for a stale version
   */
  change(actor: Actor, id: string, version: number, patch: unknown): Promise<TimeEntryEntity> {
    return this.db.write(actor, async () => {
      const row = await this.lock(actor, id);
      if (row.version !== version) throw staleVersion('time entry', row.version);
      if (row.voidedAt !== null) throw stateConflict('The entry is void and stays as it is. Log the hours anew.');
      const body = await patched(TimeEntryBody, toTimeEntryBody(row), patch);
      requireMayLogFor(actor, body.personId);
      const span = workedTime(body);
      const person = body.personId.toLowerCase() === row.personId ? {} : await this.people.find(actor, body.personId);
      const { jobId, costCode, note } = body;
      if (jobId.toLowerCase() !== row.jobId) await this.charge.holdForHours(actor, row.jobId);
      await this.charge.withHours(actor, { jobId, costCode, startedAt: span.startedAt });
      return this.entries.store.update(actor, id, version, { jobId, costCode, note: note ?? null, ...person, ...span });
    });
  }

  /** Repeated, it answers with the first reason. @throws Problem 404, or 409 when the job's hours are closed */
  void(actor: Actor, id: string, reason: string): Promise<TimeEntryEntity> {
    return this.db.write(actor, async () => {
      const row = await this.lock(actor, id);
      if (row.voidedAt !== null) return row;
      await this.charge.holdForHours(actor, row.jobId);
      return this.entries.store.update(actor, id, row.version, { voidedAt: this.clock.now(), voidReason: reason });
    });
  }

  private async lock(actor: Actor, id: string): Promise<TimeEntryEntity> {
    const row = await this.entries.store.lock(actor, id);
    requireMaySee(actor, row);
    return row;
  }
}
