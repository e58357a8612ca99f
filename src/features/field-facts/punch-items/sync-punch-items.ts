import { type Actor, EVERYONE } from '../../../platform/auth/actor.js';
import { requireBaseRevision } from '../../../platform/sync/base-revision.js';
import type { MutationKinds } from '../../../platform/sync/mutation-kinds.js';
import type { SyncedKinds } from '../../../platform/sync/synced-kinds.js';
import { PunchItemBody, PunchItemChange } from './punch-item.dto.js';
import { PunchItemEntity } from './punch-item.entity.js';
import { toPunchItemView } from './punch-item.mapper.js';
import type { PunchItemsService } from './punch-items.service.js';

/** Lets phones push and pull the punch list. Its items change, so a change says the revision that it was made on. */
export function syncPunchItems(items: PunchItemsService, mutations: MutationKinds, synced: SyncedKinds): void {
  const effect = ({ id, version }: PunchItemEntity) => ({ entity: 'punch-item', id, version });
  mutations.add({
    kind: 'punch-item.add',
    roles: EVERYONE,
    body: PunchItemBody,
    apply: async (actor, { body }) => effect((await items.add(actor, body)).row),
  });
  mutations.add({
    kind: 'punch-item.change',
    roles: EVERYONE,
    body: PunchItemChange,
    apply: async (actor, { body, context }) => {
      const { id, ...patch } = body;
      return effect(await items.change(actor, id, requireBaseRevision(context), patch));
    },
  });
  synced.add({ kind: 'punch-item', table: 'punch_item', entity: PunchItemEntity, belongsTo: { jobs: 't.job_id' }, view: (_actor: Actor, rows: readonly PunchItemEntity[]) => rows.map(toPunchItemView) });
}
