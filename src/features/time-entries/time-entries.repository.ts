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

/** All SQL of time entries. */
@Injectable()
export class TimeEntriesRepository {
  readonly store: ResourceStore<TimeEntryEntity>;

  constructor(private readonly db: TenantDatabase) {
    this.store = new ResourceStore(db, TimeEntryEntity, 'time entry');
  }

  /** What a job's hours come to, without the voided ones; one statement, whatever their number. */
  async laborOfJob(actor: Actor, jobId: string): Promise<LaborOnCostCode[]> {
    // Paid seconds × wage × (100 + burden percent) is exact in numeric; the divisions come once, on the sums. They are
    // decimal.js's and not PostgreSQL's, which rounds a quotient to some 16 digits.
    const rows = await this.db.read(actor, (manager) =>
      manager.query<{ cost_code: string; seconds: string; weighted: string }[]>(
        `SELECT cost_code, sum(seconds) AS seconds, sum(seconds * hourly_wage * (100 + burden_percent)) AS weighted
         FROM (SELECT cost_code, hourly_wage, burden_percent, extract(epoch FROM ended_at - started_at) - unpaid_break_minutes * 60 AS seconds
               FROM time_entry WHERE company_id = $1 AND job_id = $2 AND voided_at IS NULL) AS paid
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
