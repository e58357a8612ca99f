import { toInstant } from '../../../platform/clock/device-time.js';
import type { Problem } from '../../../platform/http/problem.js';
import { problemBody } from '../../../platform/http/problem.js';
import type { Effect, MutationContext } from '../../../platform/sync/mutation-kinds.js';
import { inOrder } from './order.js';
import { PUSH_PATH } from './outcome.js';
import type { MutationBody, OutcomeView } from './push.dto.js';
import type { ReadMutation, RefusedMutation } from './read-mutation.js';
import type { KeptMutation } from './sync-mutations.repository.js';

interface Sent {
  readonly clientId: string;
  readonly receivedAt: Date;
  readonly clockSkewSeconds: number | null;
}

/** The mutations of one push, and what has become of them so far. */
export class PushedBatch {
  private readonly byId = new Map<string, ReadMutation | RefusedMutation>();
  private readonly outcomes = new Map<string, OutcomeView>();

  constructor(mutations: readonly (ReadMutation | RefusedMutation)[], private readonly sent: Sent) {
    for (const mutation of mutations) if (!this.byId.has(mutation.id)) this.byId.set(mutation.id, mutation);
  }

  /** Each mutation once, in the order in which they are to be applied. */
  inOrder(): (ReadMutation | RefusedMutation)[] {
    return inOrder([...this.byId.values()].map((mutation) => ({ id: mutation.id, counter: mutation.envelope?.counter ?? 0, dependsOn: 'kind' in mutation ? mutation.dependsOn : [], mutation }))).map(({ mutation }) => mutation);
  }

  /** Their ids, and of those that they depend on. */
  idsToLookUp(): string[] {
    return [...new Set([...this.byId.values()].flatMap((mutation) => [mutation.id, ...('kind' in mutation ? mutation.dependsOn : [])]))];
  }

  has(id: string): boolean {
    return this.byId.has(id);
  }

  isSame(id: string, digest: Buffer | null): boolean {
    const first = this.byId.get(id)?.digest ?? null;
    return first !== null && digest !== null && first.equals(digest);
  }

  settle(outcome: OutcomeView): void {
    this.outcomes.set(outcome.id, outcome);
  }

  known(id: string): OutcomeView | undefined {
    return this.outcomes.get(id);
  }

  outcomeOf(id: string): OutcomeView {
    const outcome = this.outcomes.get(id);
    if (outcome === undefined) throw new Error('A mutation was left without an outcome.');
    return outcome;
  }

  settled(): OutcomeView[] {
    return [...this.outcomes.values()];
  }

  contextOf({ id, envelope }: ReadMutation): MutationContext {
    const { receivedAt, clockSkewSeconds } = this.sent;
    return { mutationId: id, recordedAt: toInstant(envelope.recordedAt), receivedAt, clockSkewSeconds, baseRevision: envelope.baseRevision ?? null };
  }

  appliedRow(pushedBy: string, { id, envelope, digest }: ReadMutation, effect: Effect): KeptMutation {
    return { ...this.row(pushedBy, id, envelope, digest), outcome: 'applied', entity: effect.entity, entityId: effect.id, revision: effect.version, problem: null };
  }

  refusedRow(pushedBy: string, id: string, envelope: MutationBody, digest: Buffer, problem: Problem, subject: { entity: string; entityId: string } | null): KeptMutation {
    const about = problem.code === 'stale-version' ? subject : null;
    return {
      ...this.row(pushedBy, id, envelope, digest),
      outcome: problem.code === 'stale-version' ? 'conflict' : 'rejected',
      entity: about?.entity ?? null,
      entityId: about?.entityId ?? null,
      revision: null,
      problem: problemBody(problem, PUSH_PATH),
    };
  }

  private row(pushedBy: string, id: string, envelope: MutationBody, digest: Buffer): Pick<KeptMutation, 'id' | 'clientId' | 'counter' | 'pushedBy' | 'kind' | 'digest' | 'recordedAt' | 'receivedAt' | 'clockSkewSeconds'> {
    return { id, ...this.sent, counter: envelope.counter, pushedBy, kind: envelope.kind, digest, recordedAt: toInstant(envelope.recordedAt) };
  }
}
