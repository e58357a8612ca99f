import { Injectable } from '@nestjs/common';
import { Decimal } from '../../domain/decimal.js';
import type { Actor } from '../../platform/auth/actor.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { countsAsWork, unpaidPauses } from './logged-work.js';
import type { StoredBreak } from './time-entry.entity.js';

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

/** How many entries of somebody count for nothing as yet. */
export interface WaitingWork {
  readonly held: number;
  readonly running: number;
}

/** Work entry by entry, by whole weeks of people: overtime depends on all that somebody did in the week. */
@Injectable()
export class LoggedWorkRepository {
  constructor(private readonly db: TenantDatabase) {}

  /**
   * All work between two instants, or over one of them, of a page of the people who worked then, newest id first; one
   * statement.
   * @param page `after` is the id before the page, `personId` the only person asked for
   */
  async between(actor: Actor, from: Date, until: Date, page: { limit: number; after: string | null; personId: string | null }): Promise<LoggedWork[]> {
    const within = (entry: string): string =>
      `${entry}.started_at > $2::timestamptz - interval '24 hours' AND ${entry}.started_at < $3 AND ${entry}.ended_at > $2 AND ${countsAsWork(entry)}`;
    const rows = await this.db.read(actor, (manager) =>
      manager.query<Row[]>(
        `SELECT e.id, e.job_id AS "jobId", e.person_id AS "personId", e.cost_code AS "costCode", e.started_at AS "startedAt", e.ended_at AS "endedAt",
           e.breaks, e.unpaid_break_minutes AS "unpaidMinutes", e.hourly_wage AS "hourlyWage", e.burden_percent AS "burdenPercent"
         FROM (SELECT DISTINCT person_id FROM time_entry AS w
               WHERE company_id = $1 AND ${within('w')} AND ($5::uuid IS NULL OR person_id < $5) AND ($6::uuid IS NULL OR person_id = $6)
               ORDER BY person_id DESC LIMIT $4) AS at_work
         JOIN time_entry AS e ON e.company_id = $1 AND e.person_id = at_work.person_id AND ${within('e')}
         ORDER BY e.person_id DESC, e.started_at`,
        [actor.companyId, from, until, page.limit, page.after, page.personId],
      ),
    );
    return rows.map(({ breaks, hourlyWage, burdenPercent, ...row }) => ({ ...row, pauses: unpaidPauses(breaks), hourlyWage: new Decimal(hourlyWage), burdenPercent: new Decimal(burdenPercent) }));
  }

  /** What people have between two instants that is held or runs still, by person; nobody without it; one statement. */
  async waiting(actor: Actor, from: Date, until: Date, personIds: readonly string[]): Promise<Map<string, WaitingWork>> {
    const rows = await this.db.read(actor, (manager) =>
      manager.query<(WaitingWork & { readonly personId: string })[]>(
        `SELECT person_id AS "personId", count(*) FILTER (WHERE held AND ended_at IS NOT NULL)::int AS held, count(*) FILTER (WHERE ended_at IS NULL)::int AS running
         FROM time_entry
         WHERE company_id = $1 AND person_id = ANY ($4) AND started_at > $2::timestamptz - interval '24 hours' AND started_at < $3
           AND voided_at IS NULL AND (ended_at IS NULL AND started_at >= $2 OR held AND ended_at > $2)
         GROUP BY person_id`,
        [actor.companyId, from, until, personIds],
      ),
    );
    return new Map(rows.map(({ personId, held, running }) => [personId, { held, running }]));
  }
}
