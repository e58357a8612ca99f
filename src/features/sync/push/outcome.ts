import { Problem, problemBody } from '../../../platform/http/problem.js';
import { idTaken } from '../../../platform/http/problems.js';
import type { Effect } from '../../../platform/sync/mutation-kinds.js';
import type { OutcomeView } from './push.dto.js';
import type { SyncMutationEntity } from './sync-mutation.entity.js';

/** Where a problem of a mutation came about. */
export const PUSH_PATH = '/v1/sync/push';

/** Refusals that are not the last word: sent again, the mutation may be applied. */
const NOT_FINAL = ['dependency-missing', 'unknown-kind', 'unexpected'];

export function isFinal(problem: Problem): boolean {
  return !NOT_FINAL.includes(problem.code);
}

export function applied(id: string, { entity, id: entityId, version }: Effect): OutcomeView {
  return { id, outcome: 'applied', entity, entityId, revision: version, final: true };
}

/** A refusal; that of a stale version is a conflict about a row. */
export function refused(id: string, problem: Problem, subject: { entity: string; entityId: string } | null = null): OutcomeView {
  const outcome = problem.code === 'stale-version' ? 'conflict' : 'rejected';
  return { id, outcome, ...(outcome === 'conflict' ? subject : {}), problem: viewOf(problem), final: isFinal(problem) };
}

/** The answer to a mutation whose id was pushed before: its first outcome, if it is the same mutation. */
export function again(id: string, digest: Buffer | null, first: SyncMutationEntity): OutcomeView {
  if (digest?.equals(first.digest) !== true) return refused(id, idTaken('mutation', id));
  const { outcome, entity, entityId, revision, problem } = first;
  return {
    id,
    outcome: 'duplicate',
    first: outcome,
    ...(entity === null ? {} : { entity }),
    ...(entityId === null ? {} : { entityId }),
    ...(revision === null ? {} : { revision }),
    ...(problem === null ? {} : { problem: { ...problem, errors: [...problem.errors] } }),
    final: true,
  };
}

/** The answer to a mutation that is twice in one push. */
export function twice(same: boolean, first: OutcomeView): OutcomeView {
  if (!same) return refused(first.id, idTaken('mutation', first.id));
  if (first.outcome === 'duplicate' || !first.final) return first;
  return { ...first, outcome: 'duplicate', first: first.outcome };
}

function viewOf(problem: Problem): NonNullable<OutcomeView['problem']> {
  const body = problemBody(problem, PUSH_PATH);
  return { ...body, errors: [...body.errors] };
}
