import { Injectable } from '@nestjs/common';
import { Decimal } from '../../domain/decimal.js';
import { isShortRest } from '../../domain/worktime/index.js';
import type { Actor } from '../../platform/auth/actor.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import type { StoredBreak } from './time-entry.entity.js';
import { toBreaks } from './worked-time.js';

/** Finished work that counts, as it was logged. */
export interface LoggedWork {
  readonly id: string;
  readonly jobId: string;
  readonly personId: string;
  readonly costCode: string;
  readonly startedAt: Date;
  readonly endedAt: Date;
  /** Breaks that do not count as worked. */
  readonly pauses: readonly { readonly startedAt: Date; readonly endedAt: Date }[];
  /** Minutes beside them that do not count. */
  readonly unpaidMinutes: number;
  readonly hourlyWage: Decimal;
  readonly burdenPercent: Decimal;
}

type Row = Omit<LoggedWork, 'pauses' | 'hourlyWage' | 'burdenPercent'> & { readonly breaks: StoredBreak[]; readonly hourlyWage: string; readonly burdenPercent: string };

/** How far back work is read beside that of the weeks asked for: not at all, or from the beginning of their year. */
export type Reach = 'weeks' | 'year';

const COLUMNS = `e.id, e.job_id AS "jobId", e.person_id AS "personId", e.cost_code AS "costCode", e.started_at AS "startedAt", e.ended_at AS "endedAt",
  e.breaks, e.unpaid_break_minutes AS "unpaidMinutes", e.hourly_wage AS "hourlyWage", e.burden_percent AS "burdenPercent"`;
const COUNTS = (entry: string): string => `${entry}.voided_at IS NULL AND ${entry}.ended_at IS NOT NULL AND NOT ${entry}.held`;
/**
 * The beginning of the year that an instant's week may count to. Wide enough for any zone and any day that weeks begin
 * on; what is read too much changes nothing.
 */
const YEAR_OF = (instant: string): string => `date_trunc('year', ${instant} AT TIME ZONE 'UTC' - interval '2 days') AT TIME ZONE 'UTC' - interval '8 days'`;

/** Work by whole weeks of people: overtime depends on all that somebody did in the week. */
@Injectable()
export class LoggedWorkRepository {
  constructor(private readonly db: TenantDatabase) {}

  /** All work of the people of a job in every week in which they worked on it; one statement. */
  ofPeopleOnJob(actor: Actor, jobId: string, reach: Reach): Promise<LoggedWork[]> {
    return this.read(
      actor,
      `SELECT ${COLUMNS}
       FROM (SELECT person_id, min(started_at) AS first, max(ended_at) AS last FROM time_entry AS w WHERE company_id = $1 AND job_id = $2 AND ${COUNTS('w')} GROUP BY person_id) AS on_job
       JOIN time_entry AS e ON e.company_id = $1 AND e.person_id = on_job.person_id
         AND e.started_at BETWEEN least(on_job.first - interval '8 days', CASE WHEN $3 = 'year' THEN ${YEAR_OF('on_job.first')} END) AND on_job.last + interval '8 days'
       WHERE ${COUNTS('e')}
       ORDER BY e.person_id, e.started_at`,
      [actor.companyId, jobId, reach],
    );
  }

  /**
   * All work of a page of the people who worked between two instants, newest id first; one statement.
   * @param page `after` is the id before the page, `personId` the only person asked for
   */
  between(actor: Actor, from: Date, until: Date, page: { limit: number; after: string | null; personId: string | null }, reach: Reach): Promise<LoggedWork[]> {
    return this.read(
      actor,
      `SELECT ${COLUMNS}
       FROM (SELECT DISTINCT person_id FROM time_entry AS w
             WHERE company_id = $1 AND started_at > $2::timestamptz - interval '24 hours' AND started_at < $3 AND ended_at > $2 AND ${COUNTS('w')}
               AND ($5::uuid IS NULL OR person_id < $5) AND ($6::uuid IS NULL OR person_id = $6)
             ORDER BY person_id DESC LIMIT $4) AS at_work
       JOIN time_entry AS e ON e.company_id = $1 AND e.person_id = at_work.person_id
         AND e.started_at >= CASE WHEN $7 = 'year' THEN least($2::timestamptz - interval '24 hours', ${YEAR_OF('$2::timestamptz')}) ELSE $2::timestamptz - interval '24 hours' END
         AND e.started_at < $3
       WHERE ${COUNTS('e')}
       ORDER BY e.person_id DESC, e.started_at`,
      [actor.companyId, from, until, page.limit, page.after, page.personId, reach],
    );
  }

  private async read(actor: Actor, sql: string, values: unknown[]): Promise<LoggedWork[]> {
    const rows = await this.db.read(actor, (manager) => manager.query<Row[]>(sql, values));
    return rows.map(({ breaks, hourlyWage, burdenPercent, ...row }) => ({
      ...row,
      pauses: toBreaks(breaks).filter((pause) => !pause.paid && !isShortRest(pause)),
      hourlyWage: new Decimal(hourlyWage),
      burdenPercent: new Decimal(burdenPercent),
    }));
  }
}
