import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { entityRows } from '../../platform/database/entity-rows.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import type { SyncedKind, SyncedRow } from '../../platform/sync/synced-kinds.js';
import type { Position } from './pull/cursor.js';
import { isOwn, keeps, keepsAll, keptSince, ofJob } from './scope.js';

/** A row as it was before a change. */
export interface FormerRow {
  readonly id: string;
  /** The columns whose values were others then. */
  readonly state: object;
}

const FIRST_ID = '00000000-0000-0000-0000-000000000000';

/** The rows that phones keep, whatever their table; one statement for each question. */
@Injectable()
export class SyncedRowsRepository {
  constructor(private readonly db: TenantDatabase) {}

  /** Those of the ids that the person keeps, as they stand now. */
  withIds(actor: Actor, kind: SyncedKind, ids: readonly string[]): Promise<SyncedRow[]> {
    return this.rows(actor, kind, `AS t WHERE t.company_id = $1 AND t.id = ANY ($3) AND ${keeps(actor, kind, '$2')}`, [ids]);
  }

  /** What the person keeps whatever job they are on, in the order of ids: all of the company's, or their own. */
  ofNoJob(actor: Actor, kind: SyncedKind, after: string | null, limit: number): Promise<SyncedRow[]> {
    const kept = kind.belongsTo === 'company' || keepsAll(actor) ? keeps(actor, kind, '$2') : isOwn(kind, '$2');
    return this.rows(actor, kind, `AS t WHERE t.company_id = $1 AND t.id > $3 AND ${kept} ORDER BY t.id LIMIT $4`, [after ?? FIRST_ID, limit]);
  }

  /** What the person keeps of one job because they are on its crew, in the order of ids. */
  ofJob(actor: Actor, kind: SyncedKind, job: string, after: string | null, limit: number): Promise<SyncedRow[]> {
    const tail = `AS t WHERE t.company_id = $1 AND t.id > $3 AND ${ofJob(kind, '$5')} AND ${keeps(actor, kind, '$2')} AND NOT ${isOwn(kind, '$2')} ORDER BY t.id LIMIT $4`;
    return this.rows(actor, kind, tail, [after ?? FIRST_ID, limit, job]);
  }

  /** What the person kept of a job whose crew they were on, and keeps no longer; nothing of any other job. */
  lostWithJob(actor: Actor, kind: SyncedKind, job: string, after: string | null, limit: number): Promise<SyncedRow[]> {
    const wasOn = 'EXISTS (SELECT FROM job_member w WHERE w.company_id = t.company_id AND w.person_id = $2 AND w.job_id = $5::uuid)';
    const tail = `AS t WHERE t.company_id = $1 AND t.id > $3 AND ${ofJob(kind, '$5')} AND ${wasOn} AND NOT ${keeps(actor, kind, '$2')} ORDER BY t.id LIMIT $4`;
    return this.rows(actor, kind, tail, [after ?? FIRST_ID, limit, job]);
  }

  /** The ids of the rows that the person kept before one of their changes since a place in the journal. */
  async keptBefore(actor: Actor, kind: SyncedKind, former: readonly FormerRow[], since: Position): Promise<string[]> {
    // The former row is the present one with the former values put over it; a row that is gone is its former values alone.
    const rows = await this.db.read(actor, (manager) =>
      manager.query<{ id: string }[]>(
        `SELECT DISTINCT t.id FROM json_to_recordset($3::json) AS former(id uuid, state jsonb)
         LEFT JOIN "${kind.table}" AS now ON now.company_id = $1 AND now.id = former.id
         CROSS JOIN LATERAL jsonb_populate_record(now, former.state) AS t
         CROSS JOIN (SELECT $4::xid8 AS xid, $5::bigint AS seq) AS place
         WHERE ${keptSince(actor, kind, '$2', 'place', 'now')}`,
        [actor.companyId, actor.personId, JSON.stringify(former), since.xid, since.seq],
      ),
    );
    return rows.map(({ id }) => id);
  }

  private rows(actor: Actor, kind: SyncedKind, tail: string, values: readonly unknown[]): Promise<SyncedRow[]> {
    return this.db.read(actor, (manager) => entityRows(manager, kind.entity, tail, [actor.companyId, actor.personId, ...values]));
  }
}
