import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { ResourceStore } from '../../platform/resources/resource-store.js';
import { TimeEntryEntity } from './time-entry.entity.js';

/** What an insert needs to be told. */
export type NewTimeEntry = Pick<
  TimeEntryEntity,
  | 'id' | 'jobId' | 'personId' | 'costCode' | 'startedAt' | 'endedAt' | 'kind' | 'unpaidBreakMinutes' | 'breaks' | 'unpaidSpanSeconds' | 'note' | 'recordedBy'
  | 'hourlyWage' | 'burdenPercent' | 'heldBecause' | 'recordedAt' | 'receivedAt' | 'clockSkewSeconds'
> & { readonly createDigest: Buffer };

export type TimeOfPerson = Pick<TimeEntryEntity, 'id' | 'personId' | 'startedAt' | 'endedAt'>;
export type TimeInTheWay = Pick<TimeEntryEntity, 'id' | 'startedAt' | 'endedAt'>;

/** All SQL of time entries. */
@Injectable()
export class TimeEntriesRepository {
  readonly store: ResourceStore<TimeEntryEntity>;

  constructor(private readonly db: TenantDatabase) {
    this.store = new ResourceStore(db, TimeEntryEntity, 'time entry');
  }

  /**
   * Inserts in one statement what contradicts nothing, the earlier of two before the later, and leaves the rest: an id
   * that is there, hours that overlap others of the person, running hours that start within others or beside others
   * that run. A statement that failed instead would take the good ones with it.
   * @returns the ids inserted
   */
  async insertMany(actor: Actor, entries: readonly NewTimeEntry[]): Promise<string[]> {
    if (entries.length === 0) return [];
    const rows = entries.map(({ createDigest, ...entry }, position) => ({ ...entry, position, digest: createDigest.toString('hex') }));
    const inserted = await this.db.write(actor, (manager) =>
      manager.query<{ id: string }[]>(
        `INSERT INTO time_entry (company_id, id, create_digest, job_id, person_id, cost_code, started_at, ended_at, kind, unpaid_break_minutes, breaks,
           unpaid_span_seconds, note, recorded_by, hourly_wage, burden_percent, held_because, recorded_at, received_at, clock_skew_seconds)
         SELECT $1, id, decode(digest, 'hex'), "jobId", "personId", "costCode", "startedAt", "endedAt", kind, "unpaidBreakMinutes", breaks,
           "unpaidSpanSeconds", note, "recordedBy", "hourlyWage", "burdenPercent", "heldBecause", "recordedAt", "receivedAt", "clockSkewSeconds"
         FROM jsonb_to_recordset($2::jsonb) AS new (position integer, id uuid, digest text, "jobId" uuid, "personId" uuid, "costCode" text,
           "startedAt" timestamptz, "endedAt" timestamptz, kind text, "unpaidBreakMinutes" integer, breaks jsonb, "unpaidSpanSeconds" numeric, note text,
           "recordedBy" uuid, "hourlyWage" numeric, "burdenPercent" numeric, "heldBecause" text[], "recordedAt" timestamptz, "receivedAt" timestamptz,
           "clockSkewSeconds" numeric)
         WHERE "endedAt" IS NOT NULL OR NOT EXISTS (
           SELECT FROM time_entry AS other
           WHERE other.company_id = $1 AND other.person_id = "personId" AND other.voided_at IS NULL
             AND other.started_at BETWEEN "startedAt" - interval '24 hours' AND "startedAt" AND other.ended_at > "startedAt")
         ORDER BY position
         ON CONFLICT DO NOTHING RETURNING id`,
        [actor.companyId, JSON.stringify(rows)],
      ),
    );
    return inserted.map(({ id }) => id);
  }

  /**
   * For each of the times, another entry of the person because of which it is not taken; null where there is none. By the
   * index of starts, no entry being longer than a day: under row-level security that of ranges can't be used.
   */
  async inTheWay(actor: Actor, times: readonly TimeOfPerson[]): Promise<(TimeInTheWay | null)[]> {
    if (times.length === 0) return [];
    const rows = await this.db.read(actor, (manager) =>
      manager.query<(TimeInTheWay & { position: number })[]>(
        `SELECT position, there.id, there.started_at AS "startedAt", there.ended_at AS "endedAt"
         FROM jsonb_to_recordset($2::jsonb) AS new (position integer, id uuid, "personId" uuid, "startedAt" timestamptz, "endedAt" timestamptz)
         CROSS JOIN LATERAL (
           (SELECT id, started_at, ended_at FROM time_entry AS other
            WHERE company_id = $1 AND person_id = "personId" AND voided_at IS NULL AND other.id <> new.id
              AND started_at BETWEEN "startedAt" - interval '24 hours' AND coalesce("endedAt", "startedAt")
              AND ended_at > "startedAt" AND (started_at < "endedAt" OR "endedAt" IS NULL)
            ORDER BY started_at LIMIT 1)
           UNION ALL
           SELECT id, started_at, ended_at FROM time_entry AS other
           WHERE company_id = $1 AND person_id = "personId" AND voided_at IS NULL AND other.id <> new.id AND ended_at IS NULL AND "endedAt" IS NULL
           LIMIT 1) AS there`,
        [actor.companyId, JSON.stringify(times.map((time, position) => ({ ...time, position })))],
      ),
    );
    const found = new Map(rows.map((row) => [row.position, row]));
    return times.map((_, position) => found.get(position) ?? null);
  }
}
