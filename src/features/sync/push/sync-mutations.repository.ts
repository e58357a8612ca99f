import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { entityRows } from '../../../platform/database/entity-rows.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import { SyncMutationEntity } from './sync-mutation.entity.js';

export type KeptMutation = Omit<SyncMutationEntity, 'companyId'>;

// One parameter, whatever the number of rows, so that the statement is planned once.
const INSERT = `INSERT INTO sync_mutation (company_id, id, client_id, counter, pushed_by, kind, digest, outcome, entity, entity_id, revision, problem, recorded_at, received_at, clock_skew_seconds)
  SELECT $1, r.id, r."clientId", r.counter, r."pushedBy", r.kind, decode(r.digest, 'hex'), r.outcome, r.entity, r."entityId", r.revision, r.problem, r."recordedAt", r."receivedAt", r."clockSkewSeconds"
  FROM json_to_recordset($2::json) AS r(id uuid, "clientId" uuid, counter integer, "pushedBy" uuid, kind text, digest text, outcome text, entity text, "entityId" uuid, revision integer, problem json, "recordedAt" timestamptz, "receivedAt" timestamptz, "clockSkewSeconds" integer)`;

/** All SQL of what phones pushed. */
@Injectable()
export class SyncMutationsRepository {
  constructor(private readonly db: TenantDatabase) {}

  /** What became of the mutations with these ids that were pushed before. */
  async find(actor: Actor, ids: readonly string[]): Promise<Map<string, SyncMutationEntity>> {
    const rows = await this.db.read(actor, (manager) => entityRows(manager, SyncMutationEntity, 'WHERE company_id = $1 AND id = ANY ($2)', [actor.companyId, ids]));
    return new Map(rows.map((row) => [row.id, row]));
  }

  /**
   * Keeps outcomes beside their effects, in the caller's transaction. Of two pushes of one mutation at once the second
   * breaks the primary key; its transaction then runs again and finds the first.
   */
  async add(actor: Actor, rows: readonly KeptMutation[]): Promise<void> {
    await this.db.write(actor, (manager) => manager.query(INSERT, [actor.companyId, JSON.stringify(rows.map(toRecord))]));
  }

  /** Keeps outcomes that have no effect; the ids of those that were not kept, since another push was first. */
  async addNew(actor: Actor, rows: readonly KeptMutation[]): Promise<string[]> {
    const made = await this.db.write(actor, (manager) =>
      manager.query<{ id: string }[]>(`${INSERT} ON CONFLICT ON CONSTRAINT pk_sync_mutation DO NOTHING RETURNING id`, [actor.companyId, JSON.stringify(rows.map(toRecord))]),
    );
    const kept = new Set(made.map(({ id }) => id));
    return rows.map(({ id }) => id).filter((id) => !kept.has(id));
  }
}

function toRecord(row: KeptMutation): object {
  return { ...row, digest: row.digest.toString('hex') };
}
