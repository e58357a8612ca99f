import type { Actor } from '../../../platform/auth/actor.js';
import type { SyncedKind, SyncedRow } from '../../../platform/sync/synced-kinds.js';
import type { PulledItemView } from './pull.dto.js';

/** Rows as phones keep them. */
export async function upserts(actor: Actor, kind: SyncedKind, rows: readonly SyncedRow[]): Promise<PulledItemView[]> {
  if (rows.length === 0) return [];
  const views = await kind.view(actor, rows);
  return rows.map(({ id, version }, i) => ({ kind: kind.kind, id, change: 'upsert', revision: version, value: views[i] ?? {} }));
}

export function removal({ kind }: SyncedKind, id: string): PulledItemView {
  return { kind, id, change: 'removal' };
}
