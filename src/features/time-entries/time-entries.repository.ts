import { Injectable } from '@nestjs/common';
import { Decimal } from '../../domain/decimal.js';
import type { Actor } from '../../platform/auth/actor.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { ResourceStore } from '../../platform/resources/resource-store.js';
import { TimeEntryEntity } from './time-entry.entity.js';

/** The labor of a job on one cost code; both figures exact, neither rounded. */
export interface LaborOnCostCode {
  readonly costCode: string;
  readonly hours: Decimal;
  /** Wage and burden, in the company's currency. */
  readonly cost: Decimal;
}

/** What an insert needs to be told. */
export type NewTimeEntry = Pick<
  TimeEntryEntity,
  | 'id' | 'jobId' | 'personId' | 'costCode' | 'startedAt' | 'endedAt' | 'kind' | 'unpaidBreakMinutes' | 'breaks' | 'unpaidSpanSeconds' | 'note' | 'recordedBy'
  | 'hourlyWage' | 'burdenPercent' | 'held' | 'recordedAt' | 'receivedAt' | 'clockSkewSeconds'
> & { readonly createDigest: Buffer };

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
           unpaid_span_seconds, note, recorded_by, hourly_wage, burden_percent, held, recorded_at, received_at, clock_skew_seconds)
         SELECT $1, id, decode(digest, 'hex'), "jobId", "personId", "costCode", "startedAt", "endedAt", kind, "unpaidBreakMinutes", breaks,
           "unpaidSpanSeconds", note, "recordedBy", "hourlyWage", "burdenPercent", held, "recordedAt", "receivedAt", "clockSkewSeconds"
         FROM jsonb_to_recordset($2::jsonb) AS new (position integer, id uuid, digest text, "jobId" uuid, "personId" uuid, "costCode" text,
           "startedAt" timestamptz, "endedAt" timestamptz, kind text, "unpaidBreakMinutes" integer, breaks jsonb, "unpaidSpanSeconds" numeric, note text,
           "recordedBy" uuid, "hourlyWage" numeric, "burdenPercent" numeric, held boolean, "recordedAt" timestamptz, "receivedAt" timestamptz,
           "clockSkewSeconds" numeric)
         WHERE "endedAt" IS NOT NULL OR NOT EXISTS (
           SELECT FROM time_entry AS other
           WHERE other.company_id = $1 AND other.person_id = "personId" AND other.voided_at IS NULL AND other.ended_at IS NOT NULL
             AND tstzrange(other.started_at, other.ended_at, '[)') @> "startedAt")
         ORDER BY position
         ON CONFLICT DO NOTHING RETURNING id`,
        [actor.companyId, JSON.stringify(rows)],
      ),
    );
    return inserted.map(({ id }) => id);
  }

  /** What a job's hours come to, without those that are void, run still or are held; one statement, whatever their number. */
  async laborOfJob(actor: Actor, jobId: string): Promise<LaborOnCostCode[]> {
    // Paid seconds × wage × (100 + burden percent) is exact in numeric; the divisions come once, on the sums. They are
    // decimal.js's and not PostgreSQL's, which rounds a quotient to some 16 digits.
    const rows = await this.db.read(actor, (manager) =>
      manager.query<{ cost_code: string; seconds: string; weighted: string }[]>(
        `SELECT cost_code, sum(seconds) AS seconds, sum(seconds * hourly_wage * (100 + burden_percent)) AS weighted
         FROM (SELECT cost_code, hourly_wage, burden_percent, extract(epoch FROM ended_at - started_at) - unpaid_break_minutes * 60 - unpaid_span_seconds AS seconds
               FROM time_entry WHERE company_id = $1 AND job_id = $2 AND voided_at IS NULL AND ended_at IS NOT NULL AND NOT held) AS paid
         GROUP BY cost_code`,
        [actor.companyId, jobId],
      ),
    );
    return rows.map((row) => ({
      costCode: row.cost_code,
      hours: new Decimal(row.seconds).div(3_600),
      cost: new Decimal(row.weighted).div(360_000),
    }));
  }
}
