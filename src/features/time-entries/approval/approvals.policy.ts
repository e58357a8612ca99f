import { type Actor, OFFICE } from '../../../platform/auth/actor.js';
import { Problem } from '../../../platform/http/problem.js';
import type { PersonEntity } from '../../people/index.js';

/**
 * A crew lead approves crew, the office everybody; nobody but the owner approves their own hours.
 * @throws Problem 403 at /personId
 */
export function requireMayApprove(actor: Actor, person: Pick<PersonEntity, 'id' | 'role'>): void {
  const ofRole = OFFICE.includes(actor.role) || person.role === 'crew';
  if (ofRole && (actor.role === 'owner' || person.id !== actor.personId)) return;
  throw new Problem('not-allowed', 'A crew lead approves the hours of crew, the office those of everybody; nobody but the owner their own.', [{ pointer: '/personId', detail: 'must be somebody whose hours you may approve' }]);
}
