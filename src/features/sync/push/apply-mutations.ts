import { Injectable, Logger } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { isUnavailable } from '../../../platform/database/database-errors.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import { Problem } from '../../../platform/http/problem.js';
import { toProblem } from '../../../platform/http/problem.filter.js';
import type { Effect } from '../../../platform/sync/mutation-kinds.js';
import { missingDependency } from './dependencies.js';
import { inWordsOfPush } from './in-words-of-push.js';
import { again, applied, isFinal, refused } from './outcome.js';
import type { PushedBatch } from './pushed-batch.js';
import type { OutcomeView } from './push.dto.js';
import type { ReadMutation, RefusedMutation } from './read-mutation.js';
import { StandingPusher } from './standing-pusher.js';
import { subjectOf } from './subject.js';
import type { SyncMutationEntity } from './sync-mutation.entity.js';
import { type KeptMutation, SyncMutationsRepository } from './sync-mutations.repository.js';

type Stored = ReadonlyMap<string, SyncMutationEntity>;

const logger = new Logger('sync');

/** Gives every mutation of a push its outcome: each effect in one transaction with what is kept of it. */
@Injectable()
export class ApplyMutations {
  constructor(
    private readonly db: TenantDatabase,
    private readonly mutations: SyncMutationsRepository,
    private readonly standing: StandingPusher,
  ) {}

  /** @param stored what became of these mutations, and of those they depend on, in earlier pushes */
  async execute(actor: Actor, batch: PushedBatch, stored: Stored): Promise<void> {
    const refusals: KeptMutation[] = [];
    let run: ReadMutation[] = [];
    const flush = async (): Promise<void> => {
      if (run.length > 0) await this.applyRun(actor, batch, run, refusals);
      run = [];
    };
    for (const mutation of batch.inOrder()) {
      const waits = 'kind' in mutation && run.length > 0 && (mutation.kind !== run[0]?.kind || run.some(({ id }) => mutation.dependsOn.includes(id)));
      if (waits) await flush();
      const first = stored.get(mutation.id);
      if (first !== undefined) batch.settle(again(mutation.id, mutation.digest, first));
      else if (!('kind' in mutation)) this.refuse(actor, batch, mutation, mutation.problem, refusals);
      else {
        const problem = missingDependency(mutation, batch, stored);
        if (problem !== null) this.refuse(actor, batch, mutation, problem, refusals);
        else run.push(mutation);
        if (mutation.kind.applyMany === undefined) await flush();
      }
    }
    await flush();
    await this.keepRefusals(actor, batch, refusals);
  }

  private async applyRun(actor: Actor, batch: PushedBatch, run: readonly ReadMutation[], refusals: KeptMutation[]): Promise<void> {
    if (run.length > 1 && (await this.applyTogether(actor, batch, run, refusals))) return;
    for (const mutation of run) await this.applyOne(actor, batch, mutation, refusals);
  }

  /** Many of one kind in one transaction; false when that failed as a whole, so that each must be tried by itself. */
  private async applyTogether(actor: Actor, batch: PushedBatch, run: readonly ReadMutation[], refusals: KeptMutation[]): Promise<boolean> {
    const kind = run[0]?.kind;
    if (kind?.applyMany === undefined) return false;
    await this.standing.require(actor);
    let attempts = 0;
    try {
      const results = await this.db.write(actor, async () => {
        const before: Stored = attempts++ === 0 ? new Map() : await this.mutations.find(actor, run.map(({ id }) => id));
        const news = run.filter(({ id }) => !before.has(id));
        const effects = (await kind.applyMany?.(actor, news.map((mutation) => ({ body: mutation.body, context: batch.contextOf(mutation) })))) ?? [];
        const rows = news.flatMap((mutation, i) => {
          const effect = effects[i];
          return effect === undefined || effect instanceof Error ? [] : [batch.appliedRow(pusher(actor), mutation, effect)];
        });
        if (rows.length > 0) await this.mutations.add(actor, rows);
        return { before, effects: new Map(news.map(({ id }, i) => [id, effects[i]])) };
      });
      for (const mutation of run) this.settle(actor, batch, mutation, results.effects.get(mutation.id) ?? null, results.before, refusals);
      return true;
    } catch (error) {
      if (isUnavailable(error)) throw error;
      logger.warn({ err: error, kind: kind.kind }, 'mutations could not be applied together; each is tried by itself');
      return false;
    }
  }

  private async applyOne(actor: Actor, batch: PushedBatch, mutation: ReadMutation, refusals: KeptMutation[]): Promise<void> {
    await this.standing.require(actor);
    let attempts = 0;
    const sent = { body: mutation.body, context: batch.contextOf(mutation) };
    try {
      await mutation.kind.prepare?.(actor, sent);
      const result = await this.db.write(actor, async (): Promise<Effect | OutcomeView> => {
        // Only a second attempt can have lost against another push of the same mutation.
        const before = attempts++ === 0 ? undefined : (await this.mutations.find(actor, [mutation.id])).get(mutation.id);
        if (before !== undefined) return again(mutation.id, mutation.digest, before);
        const effect = await mutation.kind.apply(actor, sent);
        await this.mutations.add(actor, [batch.appliedRow(pusher(actor), mutation, effect)]);
        return effect;
      });
      batch.settle('outcome' in result ? result : applied(mutation.id, result));
    } catch (error) {
      this.refuseFor(actor, batch, mutation, error, refusals);
    }
  }

  private settle(actor: Actor, batch: PushedBatch, mutation: ReadMutation, effect: Effect | Error | null, before: Stored, refusals: KeptMutation[]): void {
    const first = before.get(mutation.id);
    if (first !== undefined) batch.settle(again(mutation.id, mutation.digest, first));
    else if (effect === null || effect instanceof Error) this.refuseFor(actor, batch, mutation, effect, refusals);
    else batch.settle(applied(mutation.id, effect));
  }

  private refuseFor(actor: Actor, batch: PushedBatch, mutation: ReadMutation, error: unknown, refusals: KeptMutation[]): void {
    const problem = toProblem(error);
    // The database is away: what follows would fail alike, and nothing may be answered that was not committed.
    if (problem.code === 'unavailable') throw error;
    if (problem.code === 'unexpected') logger.error({ err: error, kind: mutation.kind.kind }, 'a mutation failed');
    this.refuse(actor, batch, mutation, inWordsOfPush(problem), refusals);
  }

  private refuse(actor: Actor, batch: PushedBatch, { id, envelope, digest }: ReadMutation | RefusedMutation, problem: Problem, refusals: KeptMutation[]): void {
    const subject = envelope === null ? null : subjectOf(envelope);
    batch.settle(refused(id, problem, subject));
    if (isFinal(problem) && envelope !== null && digest !== null) refusals.push(batch.refusedRow(pusher(actor), id, envelope, digest, problem, subject));
  }

  /** Refusals have no effect that could be lost, so all are kept at once; another push of one of them may have been first. */
  private async keepRefusals(actor: Actor, batch: PushedBatch, refusals: readonly KeptMutation[]): Promise<void> {
    if (refusals.length === 0) return;
    const late = await this.mutations.addNew(actor, refusals);
    if (late.length === 0) return;
    const first = await this.mutations.find(actor, late);
    for (const { id, digest } of refusals) {
      const before = first.get(id);
      if (before !== undefined) batch.settle(again(id, digest, before));
    }
  }
}

function pusher(actor: Actor): string {
  if (actor.personId === null) throw new Error('Only a person pushes.');
  return actor.personId;
}
