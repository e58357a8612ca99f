import { type Actor, EVERYONE } from '../../../platform/auth/actor.js';
import { requireBaseRevision } from '../../../platform/sync/base-revision.js';
import type { MutationKinds } from '../../../platform/sync/mutation-kinds.js';
import type { SyncedKinds } from '../../../platform/sync/synced-kinds.js';
import { type FactRecord, type FactRequest, FactVoid } from './fact.dto.js';
import type { FactEntity } from './fact.entity.js';
import type { FactService } from './fact.service.js';

/**
 * Lets phones push and pull a kind of fact. Facts are united by id: a second with the same id and body is the first. To
 * void one is a change, which says the revision that it was made on.
 */
export function syncFacts<E extends FactEntity, B extends FactRequest, V extends FactRecord>(facts: FactService<E, B, V>, mutations: MutationKinds, synced: SyncedKinds): void {
  const { name, mutation, table, entity, body, roles } = facts.kind;
  const effect = ({ id, version }: E) => ({ entity: name, id, version });
  mutations.add({
    kind: mutation,
    roles,
    body,
    apply: async (actor: Actor, { body: sent }) => effect((await facts.record(actor, sent)).row),
  });
  mutations.add({
    kind: `${name}.void`,
    roles: EVERYONE,
    body: FactVoid,
    apply: async (actor: Actor, { body: { id, reason }, context }) => effect(await facts.void(actor, id, reason, requireBaseRevision(context))),
  });
  synced.add({ kind: name, table, entity, belongsTo: { jobs: 't.job_id' }, view: (_actor: Actor, rows: readonly E[]) => rows.map((row) => facts.view(row)) });
}
