import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { Clock } from '../../platform/clock/clock.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { patched } from '../../platform/http/merge-patch.js';
import { invalidInput, staleVersion, stateConflict } from '../../platform/http/problems.js';
import { ChargeHours, type JobEntity } from '../jobs/index.js';
import { heldAfterCorrection, isClosed } from './held/held-because.js';
import { LockedPeriod } from './lock/locked-period.js';
import { PaidPeople } from './paid-people.js';
import { overlapping, refusingSecondRun } from './overlap-problems.js';
import { TimeEntryCorrectionBody } from './time-entries.dto.js';
import { requireMayLogFor, requireMaySee } from './time-entries.policy.js';
import { TimeEntriesRepository } from './time-entries.repository.js';
import type { TimeEntryEntity } from './time-entry.entity.js';
import { toTimeEntryBody } from './time-entry.mapper.js';
import { changedBy } from './versions/changed-by.js';
import { workedTime } from './worked-time.js';

/** Mends logged hours while their day is not locked: changes them, or voids them with a reason. */
@Injectable()
export class CorrectTime {
  constructor(
    private readonly db: TenantDatabase,
    private readonly entries: TimeEntriesRepository,
    private readonly people: PaidPeople,
    private readonly charge: ChargeHours,
    private readonly lockedPeriod: LockedPeriod,
    private readonly clock: Clock,
  ) {}

  /**
   * Applies a merge patch; what was approved was something else, so the approval falls. The wage stays the one of the
   * first entry, unless the hours turn out to be somebody else's.
   * @throws Problem as logging does, 409 for a voided entry or a locked day, 412 for a stale version, 400 at /reason
   *   when approved hours, or what a finished or cancelled job counts, are changed without one
   */
  change(actor: Actor, id: string, version: number, patch: unknown): Promise<TimeEntryEntity> {
    return this.db.write(actor, async () => {
      const locked = await this.lockedPeriod.hold(actor);
      const row = await this.lock(actor, id);
      if (row.version !== version) throw staleVersion('time entry', row.version);
      if (row.voidedAt !== null) throw stateConflict('The entry is void and stays as it is. Log the hours anew.');
      const body = await patched(TimeEntryCorrectionBody, toTimeEntryBody(row), patch);
      requireMayLogFor(actor, body.personId);
      const time = workedTime(body);
      if (row.endedAt !== null && time.endedAt === null) throw invalidInput([{ pointer: '/endedAt', detail: 'must stay: hours that ended do not run again' }]);
      locked.requireOpen(row);
      locked.requireOpen({ ...time, held: row.held });
      const person = await this.people.find(actor, body.personId);
      const moved = person.pay.personId !== row.personId;
      const jobs = await this.charge.hold(actor, [row.jobId, body.jobId]);
      const [from, to] = [jobs.require(row.jobId), jobs.requireTakes(body)];
      const counted = row.endedAt !== null && !row.held;
      if (!body.reason) refuseWithoutReason(row, counted ? [from, to] : []);
      const [there] = time.endedAt === null ? [] : await this.entries.inTheWay(actor, [{ id: row.id, personId: person.pay.personId, ...time }]);
      if (there) throw overlapping(time, there);
      const heldBecause = heldAfterCorrection({ onJob: counted && from.id === to.id, forPerson: counted && !moved }, locked, time, to, person);
      if (heldBecause.length === 0) await this.charge.begin(actor, jobs, [{ jobId: to.id, ...time }]);
      const { costCode, kind, note } = body;
      return refusingSecondRun(this.entries.store.update(actor, id, version, {
        jobId: to.id, costCode, kind: kind ?? 'work', note: note ?? null, ...(moved ? person.pay : {}), ...time,
        heldBecause, approvedAt: null, approvedBy: null, ...changedBy(actor, this.clock.now(), body.reason),
      }));
    });
  }

  /**
   * Repeated, it answers with the first reason.
   * @param version the one that must still stand; null when any may be voided
   * @throws Problem 404, 412, or 409 when the day is locked
   */
  void(actor: Actor, id: string, reason: string, version: number | null = null): Promise<TimeEntryEntity> {
    return this.db.write(actor, async () => {
      const locked = await this.lockedPeriod.hold(actor);
      const row = await this.lock(actor, id);
      if (row.voidedAt !== null) return row;
      if (version !== null && row.version !== version) throw staleVersion('time entry', row.version);
      locked.requireOpen(row);
      const now = this.clock.now();
      return this.entries.store.update(actor, id, row.version, { voidedAt: now, voidReason: reason, approvedAt: null, approvedBy: null, ...changedBy(actor, now, reason) });
    });
  }

  private async lock(actor: Actor, id: string): Promise<TimeEntryEntity> {
    const row = await this.entries.store.lock(actor, id);
    requireMaySee(actor, row);
    return row;
  }
}

/** @throws Problem 400 at /reason when somebody has relied on the hours, or on the figures of their jobs, as they are */
function refuseWithoutReason(row: TimeEntryEntity, jobs: readonly JobEntity[]): void {
  const needed = (why: string): Error => invalidInput([{ pointer: '/reason', detail: `is needed: ${why}` }]);
  if (row.approvedAt !== null) throw needed('the hours are approved');
  const closed = jobs.find(isClosed);
  if (closed !== undefined) throw needed(`job ${closed.number} is ${closed.state}`);
}
