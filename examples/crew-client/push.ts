import { MOST_IN_A_PUSH, type Mutation, type Outcome, type PushAnswer } from './contract.js';
import type { PhoneStore } from './phone-store.js';
import type { Session } from './session.js';
import { Refused } from './wire.js';

/** What the service said about the phone itself, at the last push. */
export interface PushReport {
  readonly settled: number;
  readonly clockSkewSeconds: number | null;
}

export interface PushParts {
  readonly store: PhoneStore;
  readonly session: Session;
  /** The clock on the wall. */
  readonly now: () => Date;
  readonly newId: () => string;
  readonly onSettled: (outcomes: readonly Outcome[]) => void;
}

/**
 * Sends what waits, oldest first, round after round until a round settles nothing. Between the answer and the note of
 * it on the disk the phone may die: then the same mutations go out again under the same ids, and the service answers
 * with what became of them the first time.
 * @throws NoAnswer, Refused or SignedOut; whatever was not settled still waits
 */
export async function pushAll(parts: PushParts): Promise<PushReport> {
  const report = { settled: 0, clockSkewSeconds: null };
  for (let settled = 1; settled > 0; ) {
    const round = await pushOnce(parts);
    settled = round.settled;
    report.settled += settled;
    Object.assign(report, round.clockSkewSeconds === null ? {} : { clockSkewSeconds: round.clockSkewSeconds });
  }
  return report;
}

/** Each mutation once. What the service can't settle yet must not stand in the way of what comes behind it. */
async function pushOnce({ store, session, now, newId, onSettled }: PushParts): Promise<PushReport> {
  const { waiting } = store.state;
  let [settled, most] = [0, MOST_IN_A_PUSH];
  let clockSkewSeconds: number | null = null;
  for (let line = [...waiting.values()]; line.length > 0; ) {
    const batch = line.slice(0, most);
    const before = waiting.size;
    try {
      const answer = await session.send<PushAnswer>('POST', '/v1/sync/push', { clientId: store.state.clientId, sentAt: now().toISOString(), mutations: batch });
      clockSkewSeconds = answer.clockSkewSeconds;
      settle(store, batch, answer.items, newId, onSettled);
    } catch (error) {
      if (!(error instanceof Refused) || error.status !== 413) throw error;
      if (batch.length > 1) {
        most = Math.ceil(batch.length / 2);
        continue;
      }
      // No service takes it, ever: shown to somebody, it does not keep the rest from arriving.
      settle(store, batch, batch.map(({ id }) => ({ id, outcome: 'rejected', problem: error.problem, final: true })), newId, onSettled);
    }
    settled += before - waiting.size;
    line = line.slice(batch.length);
  }
  return { settled, clockSkewSeconds };
}

function settle(store: PhoneStore, batch: readonly Mutation[], outcomes: readonly Outcome[], newId: () => string, onSettled: PushParts['onSettled']): void {
  const keep = (settled: readonly Outcome[]): void => {
    if (settled.length === 0) return;
    store.write({ event: 'settled', outcomes: settled });
    onSettled(settled);
  };
  for (const { id } of outcomes.filter((outcome) => isUploadGone(store, outcome))) store.write({ event: 'photo-again', id, newId: newId() });
  keep(outcomes.filter(({ id, final }) => final && store.state.waiting.has(id)));
  // What builds on something that came to nothing waits for ever: it is shown beside it instead.
  const byId = new Map(batch.map((mutation) => [mutation.id, mutation]));
  keep(outcomes.filter((outcome) => !outcome.final && byId.get(outcome.id)?.dependsOn?.some((id) => store.state.troubles.has(id)) === true));
}

function isUploadGone({ state }: PhoneStore, { id, final, problem }: Outcome): boolean {
  return final && state.photos.get(id) !== undefined && problem?.errors?.some(({ pointer }) => pointer === '/body/uploadId') === true;
}
