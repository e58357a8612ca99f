import { Problem } from '../../../platform/http/problem.js';
import { invalidInput } from '../../../platform/http/problems.js';
import type { PushedBatch } from './pushed-batch.js';
import type { ReadMutation } from './read-mutation.js';
import type { SyncMutationEntity } from './sync-mutation.entity.js';

/** Why a mutation can't be applied yet, or ever, because of those that it depends on; null when all were applied. */
export function missingDependency(mutation: ReadMutation, batch: PushedBatch, stored: ReadonlyMap<string, SyncMutationEntity>): Problem | null {
  for (const [index, id] of mutation.dependsOn.entries()) {
    const pointer = `/dependsOn/${index}`;
    const here = batch.known(id);
    if (id === mutation.id) return invalidInput([{ pointer, detail: 'is this mutation itself; leave it out, and push it anew with a new id' }]);
    const outcome = here === undefined ? stored.get(id)?.outcome : here.outcome === 'duplicate' ? here.first : here.outcome;
    if (outcome === 'applied') continue;
    if (here === undefined && batch.has(id)) return invalidInput([{ pointer, detail: 'depends on this mutation in turn; decide which goes first, and push both anew with new ids' }]);
    if (outcome === undefined || here?.final === false) {
      return new Problem('dependency-missing', `The mutation ${id}, which this one depends on, was not applied yet. Send both again.`, [{ pointer, detail: 'was not applied yet' }]);
    }
    return new Problem('dependency-failed', `The mutation ${id}, which this one depends on, was not applied. Mend that one, and do this anew with a new id.`, [{ pointer, detail: `its outcome was ${outcome}` }]);
  }
  return null;
}
