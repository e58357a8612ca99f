import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { SyncedKinds } from '../../../platform/sync/synced-kinds.js';
import { SyncedRowsRepository } from '../synced-rows.repository.js';
import type { PushedBatch } from './pushed-batch.js';

/** Shows in each conflict how the row stands now, so that the phone can ask its person without another request. */
@Injectable()
export class ConflictRows {
  constructor(
    private readonly kinds: SyncedKinds,
    private readonly rows: SyncedRowsRepository,
  ) {}

  async show(actor: Actor, batch: PushedBatch): Promise<void> {
    const conflicts = batch.settled().filter(({ outcome, first, entityId }) => (outcome === 'conflict' || first === 'conflict') && entityId !== undefined);
    for (const kind of this.kinds.all()) {
      const ofKind = conflicts.filter(({ entity }) => entity === kind.kind);
      if (ofKind.length === 0) continue;
      const rows = await this.rows.withIds(actor, kind, ofKind.map(({ entityId }) => entityId ?? ''));
      const views = await kind.view(actor, rows);
      const found = new Map(rows.map((row, i) => [row.id, { revision: row.version, current: views[i] ?? {} }]));
      for (const conflict of ofKind) batch.settle({ ...conflict, ...found.get(conflict.entityId ?? '') });
    }
  }
}
