import { Injectable } from '@nestjs/common';
import { Decimal } from '../../domain/decimal.js';
import { cutWork } from '../../domain/worktime/week/index.js';
import type { Actor } from '../../platform/auth/actor.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { countsAsWork, unpaidPauses } from './logged-work.js';
import type { StoredBreak } from './time-entry.entity.js';

/** A stretch of time of a person. */
export interface PersonSpan {
  readonly personId: string;
  readonly from: Date;
  readonly until: Date;
}

/** What somebody worked at one wage between two of the instants at which work is cut. */
export interface PaidSum {
  readonly personId: string;
  /** Place of the earlier instant. */
  readonly place: number;
  /** That count as worked; whole. */
  readonly milliseconds: number;
  readonly hourlyWage: Decimal;
}

/** The same by job and cost code, in the order in which they were worked on. */
export interface WorkSum extends PaidSum {
  readonly jobId: string;
  readonly costCode: string;
  readonly burdenPercent: Decimal;
}

/** A sum, or an entry over one of the instants, which comes by itself and with its breaks. */
interface Row {
  readonly personId: string;
  readonly hourlyWage: string;
  readonly place: number;
  readonly milliseconds: number;
  readonly startedAt: Date;
  readonly endedAt: Date;
  readonly unpaidMinutes: number;
  readonly breaks: StoredBreak[] | null;
}

const JOB_COLUMNS = ['job_id AS "jobId"', 'cost_code AS "costCode"', 'burden_percent AS "burdenPercent"'];

/** Hours summed by the database: of a year of many people hardly more than its sums is read. */
@Injectable()
export class WorkSumsRepository {
  constructor(private readonly db: TenantDatabase) {}

  /** From when to when people worked on a job in each year, by UTC; one statement. */
  spansOnJob(actor: Actor, jobId: string): Promise<PersonSpan[]> {
    return this.db.read(actor, (manager) =>
      manager.query<PersonSpan[]>(
        `SELECT person_id AS "personId", min(started_at) AS "from", max(ended_at) AS until FROM time_entry AS e
         WHERE company_id = $1 AND job_id = $2 AND ${countsAsWork('e')}
         GROUP BY person_id, date_trunc('year', started_at AT TIME ZONE 'UTC') ORDER BY person_id`,
        [actor.companyId, jobId],
      ),
    );
  }

  /** What people worked, by wage; one statement. @param spans of a person none over another @param starts as `cutWork` takes them */
  byWage(actor: Actor, spans: readonly PersonSpan[], starts: readonly number[]): Promise<PaidSum[]> {
    return this.sums<Row>(actor, spans, starts, []);
  }

  /** What people worked, by wage, job and cost code; one statement. @param spans of a person none over another @param starts as `cutWork` takes them */
  async byJob(actor: Actor, spans: readonly PersonSpan[], starts: readonly number[]): Promise<WorkSum[]> {
    const sums = await this.sums<Row & { readonly jobId: string; readonly costCode: string; readonly burdenPercent: string }>(actor, spans, starts, JOB_COLUMNS);
    return sums.map((sum) => ({ ...sum, burdenPercent: new Decimal(sum.burdenPercent) }));
  }

  private async sums<R extends Row>(actor: Actor, spans: readonly PersonSpan[], starts: readonly number[], columns: readonly string[]): Promise<(Omit<R, 'hourlyWage'> & PaidSum)[]> {
    const rows = await this.db.read(actor, (manager) =>
      manager.query<R[]>(
        // By person, so that the database sorts a year of one at a time and never all of them on disk.
        `SELECT span.person_id AS "personId", sums.*
         FROM unnest($2::uuid[], $3::timestamptz[], $4::timestamptz[]) AS span (person_id, begins, ends)
         CROSS JOIN LATERAL (
           SELECT ${['hourly_wage AS "hourlyWage"', ...columns].join(', ')}, place, sum(milliseconds) AS milliseconds, min(started_at) AS "startedAt",
             max(ended_at) AS "endedAt", max(unpaid_break_minutes) AS "unpaidMinutes", (array_agg(breaks) FILTER (WHERE crosses))[1] AS breaks
           FROM (SELECT *, place < 0 OR ended_at > ($5::timestamptz[])[place + 2] AS crosses
                 FROM (SELECT e.*, width_bucket(e.started_at, $5::timestamptz[]) - 1 AS place,
                         round(date_part('epoch', e.ended_at - e.started_at) * 1000 - e.unpaid_span_seconds::float8 * 1000) - e.unpaid_break_minutes * 60000 AS milliseconds
                       FROM time_entry AS e
                       WHERE e.company_id = $1 AND e.person_id = span.person_id
                         AND e.started_at > span.begins - interval '24 hours' AND e.started_at < span.ends AND e.ended_at > span.begins AND ${countsAsWork('e')} OFFSET 0) AS placed) AS work
           GROUP BY hourly_wage, ${columns.map((column) => `${column.split(' ')[0]}, `).join('')}place, CASE WHEN crosses THEN id END) AS sums
         ORDER BY "startedAt"`,
        [actor.companyId, spans.map(({ personId }) => personId), spans.map(({ from }) => from), spans.map(({ until }) => until), starts.map((start) => new Date(start))],
      ),
    );
    const wages = new Map<string, Decimal>();
    return rows.flatMap((row) => {
      const hourlyWage = wages.get(row.hourlyWage) ?? new Decimal(row.hourlyWage);
      wages.set(row.hourlyWage, hourlyWage);
      if (row.breaks === null) return [{ ...row, hourlyWage }];
      return cutWork({ ...row, pauses: unpaidPauses(row.breaks) }, starts).map((piece) => ({ ...row, hourlyWage, ...piece }));
    });
  }
}
