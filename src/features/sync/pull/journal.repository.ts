import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import type { FormerRow } from '../synced-rows.repository.js';
import type { Position } from './cursor.js';

/** A change of a row, as the journal tells it. */
export interface Change extends Position {
  readonly table: string;
  readonly id: string;
  /** The job, when the change is one of this person's place on its crew. */
  readonly job: string | null;
  /** Whether the person is on the crew of that job now. */
  readonly joined: boolean | null;
}

export interface JournalPage {
  /** What the position means: it changes when the database was moved to another cluster. */
  readonly epoch: string;
  /** Whether the position is still a place in this journal. */
  readonly known: boolean;
  /** The last place that every later commit comes after. */
  readonly end: Position;
  readonly changes: readonly Change[];
}

type Row = Partial<Change> & { readonly epoch: string; readonly known: boolean; readonly endXid: string | null; readonly endSeq: string | null };

// Only what is below the oldest transaction that still runs: a row of that one would come before those that were read.
const SETTLED = 'xid < pg_snapshot_xmin(pg_current_snapshot())';

/** Reads the journal of the company as a feed. */
@Injectable()
export class JournalRepository {
  constructor(private readonly db: TenantDatabase) {}

  /** The changes of these tables after a position, in one statement, so that all of it is of one moment. */
  async after(actor: Actor, { xid, seq }: Position, tables: readonly string[], limit: number): Promise<JournalPage> {
    const rows = await this.db.read(actor, (manager) =>
      manager.query<Row[]>(
        `SELECT (SELECT system_identifier::text FROM pg_control_system()) AS epoch,
                $2::xid8 = '0' OR EXISTS (SELECT FROM history WHERE company_id = $1 AND xid = $2::xid8 AND seq = $3::bigint) AS known,
                last.xid::text AS "endXid", last.seq::text AS "endSeq",
                h.xid::text AS xid, h.seq::text AS seq, h.entity AS "table", h.entity_id AS id, m.job_id AS job, m.left_at IS NULL AS joined
         FROM (SELECT 1) AS one
         LEFT JOIN LATERAL (SELECT xid, seq FROM history WHERE company_id = $1 AND ${SETTLED} ORDER BY xid DESC, seq DESC LIMIT 1) AS last ON true
         LEFT JOIN LATERAL (SELECT xid, seq, entity, entity_id FROM history
           WHERE company_id = $1 AND (xid, seq) > ($2::xid8, $3::bigint) AND ${SETTLED} AND entity = ANY ($4) ORDER BY xid, seq LIMIT $5) AS h ON true
         LEFT JOIN job_member AS m ON m.company_id = $1 AND h.entity = 'job_member' AND m.id = h.entity_id AND m.person_id = $6
         ORDER BY h.xid, h.seq`,
        [actor.companyId, xid, seq, [...tables, 'job_member'], limit, actor.personId],
      ),
    );
    const [first] = rows;
    if (first === undefined) throw new Error('The journal gave no row.');
    return {
      epoch: first.epoch,
      known: first.known,
      // A committed row and not the edge itself: after a crash the numbers of transactions that had come to nothing are
      // given out again, and a cursor at the edge would be ahead of them.
      end: { xid: first.endXid ?? '0', seq: first.endSeq ?? '0' },
      changes: rows.filter((row): row is Row & Change => row.xid !== null && row.xid !== undefined),
    };
  }

  /** What the rows were before each of their changes since a position, latest change first undone. */
  async formerStates(actor: Actor, table: string, ids: readonly string[], since: Position): Promise<FormerRow[]> {
    const rows = await this.db.read(actor, (manager) =>
      // Changes of one row follow each other by seq, even when the transaction of the later one began first.
      manager.query<{ id: string; before: object }[]>(
        `SELECT entity_id AS id, before FROM history
         WHERE company_id = $1 AND entity = $2 AND entity_id = ANY ($3) AND (xid, seq) > ($4::xid8, $5::bigint) AND before IS NOT NULL ORDER BY seq DESC`,
        [actor.companyId, table, ids, since.xid, since.seq],
      ),
    );
    const states = new Map<string, object>();
    return rows.map(({ id, before }) => {
      const state = { ...states.get(id), ...before };
      states.set(id, state);
      return { id, state };
    });
  }
}
