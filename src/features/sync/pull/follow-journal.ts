import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { type SyncedKind, SyncedKinds } from '../../../platform/sync/synced-kinds.js';
import { keepsAll } from '../scope.js';
import { SyncedRowsRepository } from '../synced-rows.repository.js';
import type { Position, Task } from './cursor.js';
import { type Change, JournalRepository } from './journal.repository.js';
import type { PulledItemView } from './pull.dto.js';
import { removal, upserts } from './pulled-items.js';

/** Changes that are looked at in one step; most of them may be none of this person's business. */
const STEP = 500;

export interface Followed {
  readonly epoch: string;
  readonly known: boolean;
  readonly items: readonly PulledItemView[];
  readonly position: Position;
  readonly task: Task | null;
  readonly more: boolean;
}

/** Follows the journal: what changed, as it stands now, and what left the person's sight. */
@Injectable()
export class FollowJournal {
  constructor(
    private readonly kinds: SyncedKinds,
    private readonly journal: JournalRepository,
    private readonly rows: SyncedRowsRepository,
  ) {}

  async execute(actor: Actor, from: Position, limit: number): Promise<Followed> {
    const kinds = this.kinds.all();
    const { epoch, known, end, changes } = await this.journal.after(actor, from, kinds.map(({ table }) => table), STEP);
    const { taken, task } = take(actor, changes, limit);
    const items: PulledItemView[] = [];
    for (const kind of kinds) {
      const ids = [...new Set(taken.filter(({ table }) => table === kind.table).map(({ id }) => id))];
      if (ids.length > 0) items.push(...(await this.changed(actor, kind, ids, from)));
    }
    const all = taken.length === changes.length && changes.length < STEP;
    const last = taken.at(-1);
    const position = all || last === undefined ? end : { xid: last.xid, seq: last.seq };
    return { epoch, known, items, position, task, more: !all || task !== null };
  }

  private async changed(actor: Actor, kind: SyncedKind, ids: readonly string[], since: Position): Promise<PulledItemView[]> {
    const rows = await this.rows.withIds(actor, kind, ids);
    const kept = new Set(rows.map(({ id }) => id));
    const gone = ids.filter((id) => !kept.has(id));
    const former = gone.length === 0 ? [] : await this.journal.formerStates(actor, kind.table, gone, since);
    const left = former.length === 0 ? [] : await this.rows.keptBefore(actor, kind, former, since);
    return [...(await upserts(actor, kind, rows)), ...left.map((id) => removal(kind, id))];
  }
}

/**
 * The changes of one step: as many different rows as there is room for, and none after one that brings or takes a
 * whole job, whose rows come first.
 */
function take(actor: Actor, changes: readonly Change[], limit: number): { taken: Change[]; task: Task | null } {
  const taken: Change[] = [];
  const different = new Set<string>();
  for (const change of changes) {
    const key = `${change.table} ${change.id}`;
    if (!different.has(key) && different.size === limit) break;
    different.add(key);
    taken.push(change);
    if (change.job !== null && !keepsAll(actor)) return { taken, task: { what: change.joined === true ? 'fill' : 'drop', job: change.job, kind: '', after: null } };
  }
  return { taken, task: null };
}
