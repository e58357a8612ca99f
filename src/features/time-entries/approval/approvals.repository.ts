import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { entityRows } from '../../../platform/database/entity-rows.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import { TimeEntryEntity } from '../time-entry.entity.js';

export interface DayOfPerson {
  readonly personId: string;
  readonly from: Date;
  readonly until: Date;
}

const OF_DAY = 'company_id = $1 AND person_id = $2 AND started_at >= $3 AND started_at < $4 AND voided_at IS NULL';

/** The SQL of approvals: they are marks on the entries, so that hours that nobody saw never count as approved. */
@Injectable()
export class ApprovalsRepository {
  constructor(private readonly db: TenantDatabase) {}

  async approve(actor: Actor, day: DayOfPerson, now: Date): Promise<void> {
    await this.change(
      actor, day,
      `SET approved_at = $5, approved_by = $6, changed_at = $5, changed_by = $6, change_reason = NULL, version = version + 1
       WHERE ${OF_DAY} AND ended_at IS NOT NULL AND NOT held AND approved_at IS NULL`,
      [now, actor.personId],
    );
  }

  async withdraw(actor: Actor, day: DayOfPerson, now: Date, reason: string): Promise<void> {
    await this.change(
      actor, day,
      `SET approved_at = NULL, approved_by = NULL, changed_at = $5, changed_by = $6, change_reason = $7, version = version + 1
       WHERE ${OF_DAY} AND approved_at IS NOT NULL`,
      [now, actor.personId, reason],
    );
  }

  /** Earliest first; at most a day's worth, since a person's hours do not overlap. */
  entriesOf(actor: Actor, day: DayOfPerson): Promise<TimeEntryEntity[]> {
    return this.db.read(actor, (manager) => entityRows(manager, TimeEntryEntity, `WHERE ${OF_DAY} ORDER BY started_at`, [actor.companyId, ...valuesOf(day)]));
  }

  private async change(actor: Actor, day: DayOfPerson, rest: string, values: readonly unknown[]): Promise<void> {
    await this.db.write(actor, (manager) => manager.query(`UPDATE time_entry ${rest}`, [actor.companyId, ...valuesOf(day), ...values]));
  }
}

function valuesOf({ personId, from, until }: DayOfPerson): unknown[] {
  return [personId, from, until];
}
