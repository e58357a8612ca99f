import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { type SyncedKind, SyncedKinds } from '../../../platform/sync/synced-kinds.js';
import { JobCrew } from '../../jobs/index.js';
import { keepsAll, keepsOnlyOwn } from '../scope.js';
import { SyncedRowsRepository } from '../synced-rows.repository.js';
import type { Task } from './cursor.js';
import type { PulledItemView } from './pull.dto.js';
import { removal, upserts } from './pulled-items.js';

export interface Given {
  readonly items: readonly PulledItemView[];
  /** What is left to be given; null when that was all. */
  readonly task: Task | null;
}

/** Gives the rows of a task, one kind at a time in the order of ids, so that any page can be the last before a long silence. */
@Injectable()
export class GiveRows {
  constructor(
    private readonly kinds: SyncedKinds,
    private readonly rows: SyncedRowsRepository,
    private readonly crew: JobCrew,
  ) {}

  async execute(actor: Actor, task: Task, limit: number): Promise<Given> {
    const [kind, ...later] = this.kinds.all().filter((one) => one.kind >= task.kind && isGiven(actor, one, task));
    if (kind === undefined) return { items: [], task: await this.afterJob(actor, task) };
    const after = kind.kind === task.kind ? task.after : null;
    const { items, last } = await this.page(actor, kind, task, after, limit);
    if (items.length === limit) return { items, task: { ...task, kind: kind.kind, after: last } };
    const [next] = later;
    return { items, task: next === undefined ? await this.afterJob(actor, task) : { ...task, kind: next.kind, after: null } };
  }

  private async page(actor: Actor, kind: SyncedKind, { what, job }: Task, after: string | null, limit: number): Promise<{ items: PulledItemView[]; last: string | null }> {
    if (what === 'drop') {
      const lost = job === null ? [] : await this.rows.lostWithJob(actor, kind, job, after, limit);
      return { items: lost.map(({ id }) => removal(kind, id)), last: lost.at(-1)?.id ?? null };
    }
    const rows = job === null ? await this.rows.ofNoJob(actor, kind, after, limit) : await this.rows.ofJob(actor, kind, job, after, limit);
    return { items: await upserts(actor, kind, rows), last: rows.at(-1)?.id ?? null };
  }

  /** At the start the jobs follow each other; who keeps all jobs had them all at once. */
  private async afterJob(actor: Actor, { what, job }: Task): Promise<Task | null> {
    if (what !== 'all' || keepsAll(actor) || actor.personId === null) return null;
    const next = (await this.crew.jobsOf(actor, actor.personId)).find((id) => job === null || id > job);
    return next === undefined ? null : { what, job: next, kind: '', after: null };
  }
}

/** Whether the task gives rows of this kind: without a job those that are kept whatever the job, with one the others. */
function isGiven(actor: Actor, kind: SyncedKind, { job }: Task): boolean {
  if (job !== null) return kind.belongsTo !== 'company' && !keepsOnlyOwn(actor, kind);
  return kind.belongsTo === 'company' || kind.own !== undefined || keepsAll(actor);
}
