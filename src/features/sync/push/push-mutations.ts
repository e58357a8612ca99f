import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { Clock } from '../../../platform/clock/clock.js';
import { MutationKinds } from '../../../platform/sync/mutation-kinds.js';
import { ApplyMutations } from './apply-mutations.js';
import { skewWarning, wholeSkewSeconds } from './clock-skew.js';
import { ConflictRows } from './conflict-rows.js';
import { twice } from './outcome.js';
import { PushedBatch } from './pushed-batch.js';
import type { OutcomeView, PushBody, PushView } from './push.dto.js';
import { readMutation } from './read-mutation.js';
import { SyncMutationsRepository } from './sync-mutations.repository.js';

/** Takes what a phone did while it was away: an outcome for each mutation, whatever becomes of the others. */
@Injectable()
export class PushMutations {
  constructor(
    private readonly kinds: MutationKinds,
    private readonly mutations: SyncMutationsRepository,
    private readonly applying: ApplyMutations,
    private readonly conflicts: ConflictRows,
    private readonly clock: Clock,
  ) {}

  /**
   * May be sent again as a whole or in part, at any time, also at the same time: each mutation has one effect.
   * @throws Problem 503 when the database goes away in between; what was applied by then stays, and is a duplicate later
   */
  async execute(actor: Actor, { clientId, sentAt, mutations }: PushBody): Promise<PushView> {
    const receivedAt = this.clock.now();
    const skew = wholeSkewSeconds(sentAt, receivedAt);
    const read = [];
    for (const raw of mutations) read.push(await readMutation(actor, this.kinds, raw));
    const batch = new PushedBatch(read, { clientId: clientId.toLowerCase(), receivedAt, clockSkewSeconds: skew });
    await this.applying.execute(actor, batch, await this.mutations.find(actor, batch.idsToLookUp()));
    await this.conflicts.show(actor, batch);
    const answered = new Set<string>();
    const items = read.map(({ id, digest }): OutcomeView => {
      const outcome = batch.outcomeOf(id);
      const repeated = answered.has(id);
      answered.add(id);
      return repeated ? twice(batch.isSame(id, digest), outcome) : outcome;
    });
    return { receivedAt: receivedAt.toISOString(), clockSkewSeconds: skew, warnings: skewWarning(skew), items };
  }
}
