import { Problem } from '../http/problem.js';
import type { MutationContext } from './mutation-kinds.js';

/**
 * The revision that a change was made on. Without it, a phone that was away would undo what others did meanwhile.
 * @throws Problem 428
 */
export function requireBaseRevision({ baseRevision }: MutationContext): number {
  if (baseRevision === null) throw new Problem('version-required', 'The change must say the revision that it was made on, in baseRevision.');
  return baseRevision;
}
