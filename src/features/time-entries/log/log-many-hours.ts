import { Injectable } from '@nestjs/common';
import { v7 as uuidv7 } from 'uuid';
import type { Actor } from '../../../platform/auth/actor.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import { idTaken } from '../../../platform/http/problems.js';
import { requestDigest } from '../../../platform/resources/digest.js';
import type { Made } from '../../../platform/resources/resource-store.js';
import { ChargeHours } from '../../jobs/index.js';
import { heldBecause } from '../held/held-because.js';
import { LockedPeriod } from '../lock/locked-period.js';
import { PaidPeople } from '../paid-people.js';
import { overlapping } from '../overlap-problems.js';
import type { TimeEntryBody } from '../time-entries.dto.js';
import { requireMayLogFor } from '../time-entries.policy.js';
import { type NewTimeEntry, TimeEntriesRepository } from '../time-entries.repository.js';
import type { TimeEntryEntity } from '../time-entry.entity.js';
import { type WorkedTime, workedTime } from '../worked-time.js';
import { type Receipt, receiptColumns } from './receipt.js';

export interface HoursToLog {
  readonly body: TimeEntryBody;
  readonly receipt: Receipt;
}

/** What became of the hours: their row, or why they were refused. */
export type Logged = Made<TimeEntryEntity> | Error;

interface Pending extends HoursToLog {
  readonly id: string;
  readonly digest: Buffer;
  readonly time: WorkedTime;
}

/** Logs hours, each once however often a phone sends it; any number of them in nine statements, ten when some overlap others. */
@Injectable()
export class LogManyHours {
  constructor(
    private readonly db: TenantDatabase,
    private readonly entries: TimeEntriesRepository,
    private readonly people: PaidPeople,
    private readonly charge: ChargeHours,
    private readonly lockedPeriod: LockedPeriod,
  ) {}

  /**
   * One answer for each, in their order; hours that are refused do not touch the others. Of two that contradict each
   * other, the earlier in the list wins.
   * @returns for a refusal a Problem or DomainError: 400, 403 or 422 with the field, 409 when the person is
   *   logged elsewhere at that time, or the id was used with another body
   */
  execute(actor: Actor, hours: readonly HoursToLog[]): Promise<Logged[]> {
    return this.db.write(actor, async () => {
      const outcomes: (Logged | Pending)[] = hours.map((item) => attempt(() => prepared(actor, item)));
      const pending = (): Pending[] => outcomes.filter(isPending);
      // Before all else: a phone may repeat an hour whose job was finished, or whose person left, in the meantime.
      this.settle(outcomes, await this.entries.store.findMany(actor, pending().map(({ id }) => id)));
      const people = await this.people.findMany(actor, pending().map(({ body }) => body.personId));
      const locked = await this.lockedPeriod.hold(actor);
      const jobs = await this.charge.hold(actor, pending().map(({ body }) => body.jobId));
      const rows: NewTimeEntry[] = [];
      for (const [index, item] of outcomes.entries()) {
        if (!isPending(item)) continue;
        const row = attempt(() => {
          const person = people.require(item.body.personId);
          const job = jobs.requireTakes(item.body);
          return { ...toRow(item), ...person.pay, recordedBy: actor.personId ?? person.pay.personId, heldBecause: heldBecause(locked, item.time, job, person) };
        });
        if (row instanceof Error) outcomes[index] = row;
        else rows.push(row);
      }
      const made = new Set(await this.entries.insertMany(actor, rows));
      this.settle(outcomes, await this.entries.store.findMany(actor, rows.map(({ id }) => id)), made);
      await this.charge.begin(actor, jobs, rows.filter(({ id, heldBecause: held }) => made.has(id) && held.length === 0));
      return this.refusing(actor, outcomes);
    });
  }

  /** Only the constraints on a person's time are left to refuse what is pending yet. */
  private async refusing(actor: Actor, outcomes: readonly (Logged | Pending)[]): Promise<Logged[]> {
    const left = outcomes.filter(isPending);
    const inTheWay = await this.entries.inTheWay(actor, left.map(({ id, body, time }) => ({ id, personId: body.personId, startedAt: time.startedAt, endedAt: time.endedAt })));
    return outcomes.map((outcome) => (isPending(outcome) ? overlapping(outcome.time, inTheWay[left.indexOf(outcome)] ?? null) : outcome));
  }

  /** Answers those whose id is there by now: with the row, or with a refusal when another body made it. */
  private settle(outcomes: (Logged | Pending)[], there: ReadonlyMap<string, TimeEntryEntity>, made: ReadonlySet<string> = new Set()): void {
    const unclaimed = new Set(made);
    for (const [index, item] of outcomes.entries()) {
      const row = isPending(item) ? there.get(item.id) : undefined;
      if (!isPending(item) || row === undefined) continue;
      outcomes[index] = item.digest.equals(row.createDigest ?? Buffer.alloc(0)) ? { row, created: unclaimed.delete(item.id) } : idTaken('time entry', item.id);
    }
  }
}

/** What can be told of the hours by themselves. @throws Problem or DomainError */
function prepared(actor: Actor, { body, receipt }: HoursToLog): Pending {
  requireMayLogFor(actor, body.personId);
  // How a body came in does not make it another body: a repeated request is sent at another time.
  return { body, receipt, id: (body.id ?? uuidv7()).toLowerCase(), digest: requestDigest({ ...body, recordedAt: null, sentAt: null }), time: workedTime(body) };
}

function toRow({ id, digest, body, receipt, time }: Pending): Omit<NewTimeEntry, 'personId' | 'hourlyWage' | 'burdenPercent' | 'recordedBy' | 'heldBecause'> {
  const { jobId, costCode, kind, note } = body;
  return { id, createDigest: digest, jobId, costCode, kind: kind ?? 'work', note: note ?? null, ...time, ...receiptColumns(receipt) };
}

function isPending(outcome: Logged | Pending): outcome is Pending {
  return 'digest' in outcome;
}

function attempt<T>(work: () => T): T | Error {
  try {
    return work();
  } catch (error) {
    if (error instanceof Error) return error;
    throw error;
  }
}
