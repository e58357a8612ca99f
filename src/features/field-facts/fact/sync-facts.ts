import type { Actor } from '../../../platform/auth/actor.js';
import type { MutationKinds } from '../../../platform/sync/mutation-kinds.js';
import type { SyncedKinds } from '../../../platform/sync/synced-kinds.js';
import type { FactRecord, FactRequest } from './fact.dto.js';
import type { FactEntity } from './fact.entity.js';
import type { FactService } from './fact.service.js';

/** Lets phones push and pull a kind of fact. Facts are united by id: a second with the same id and body is the first. */
export function syncFacts<E extends FactEntity, B extends FactRequest, V extends FactRecord>(facts: FactService<E, B, V>, mutations: MutationKinds, synced: SyncedKinds): void {
  const { name, mutation, table, entity, body, roles } = facts.kind;
  mutations.add({
    kind: mutation,
    roles,
    body,
    apply: async (actor: Actor, { body: sent }) => {
      const { row } = await facts.record(actor, sent);
      return { entity: name, id: row.id, version: row.version };
    },
  });
  synced.add({ kind: name, table, entity, belongsTo: { jobs: 't.job_id' }, view: (_actor: Actor, rows: readonly E[]) => rows.map((row) => facts.view(row)) });
}
