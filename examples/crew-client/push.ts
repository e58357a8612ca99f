import { MOST_IN_A_PUSH, type Mutation, type Outcome, type PushAnswer } from './contract.js';
import type { PhoneStore } from './phone-store.js';
import type { Session } from './session.js';
import { Refused } from './wire.js';

/** What the service said about the phone itself, at the last push. */
export interface PushReport {
  readonly settled: number;
  readonly clockSkewSeconds: number | null;
}

/**
 * Sends what waits, oldest first, until it is all settled or a round settles nothing. Between the answer and the note
 * of it on the disk the phone may die: then the same mutations go out again under the same ids, and the service
 * answers with what became of them the first time.
 * @throws NoAnswer, Refused or SignedOut; whatever was not settled still waits
 */
export async function pushAll(store: PhoneStore, session: Session, now: () => Date, onSettled: (outcomes: readonly Outcome[]) => void): Promise<PushReport> {
  let settled = 0;
  let clockSkewSeconds: number | null = null;
  let most = MOST_IN_A_PUSH;
  while (store.state.waiting.size > 0) {
    const batch = [...store.state.waiting.values()].slice(0, most);
    try {
      const answer = await session.send<PushAnswer>('POST', '/v1/sync/push', { clientId: store.state.clientId, sentAt: now().toISOString(), mutations: batch });
      clockSkewSeconds = answer.clockSkewSeconds;
      const count = settle(store, batch, answer.items, onSettled);
      settled += count;
      if (count === 0) break;
    } catch (error) {
      // Long notes add up; a single one that is too long is the service's to refuse by itself.
      if (!(error instanceof Refused) || error.status !== 413 || batch.length === 1) throw error;
      most = Math.ceil(batch.length / 2);
    }
  }
  return { settled, clockSkewSeconds };
}

/** @returns how many do not wait any more */
function settle(store: PhoneStore, batch: readonly Mutation[], outcomes: readonly Outcome[], onSettled: (outcomes: readonly Outcome[]) => void): number {
  const before = store.state.waiting.size;
  const keep = (settled: readonly Outcome[]): void => {
    if (settled.length === 0) return;
    store.write({ event: 'settled', outcomes: settled });
    onSettled(settled);
  };
  keep(outcomes.filter((outcome) => outcome.final));
  // What builds on something that came to nothing waits for ever: it is shown beside it instead.
  const byId = new Map(batch.map((mutation) => [mutation.id, mutation]));
  keep(outcomes.filter((outcome) => !outcome.final && byId.get(outcome.id)?.dependsOn?.some((id) => store.state.troubles.has(id)) === true));
  return before - store.state.waiting.size;
}
