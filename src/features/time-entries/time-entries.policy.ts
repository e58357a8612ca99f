import { type Actor, LEADS } from '../../platform/auth/actor.js';
import { Problem } from '../../platform/http/problem.js';
import { notFound } from '../../platform/http/problems.js';
import type { TimeEntryEntity } from './time-entry.entity.js';

/** The only person whose hours the actor may log and see; null when everybody's. */
export function onlyPerson(actor: Actor): string | null {
  return LEADS.includes(actor.role) ? null : actor.personId;
}

/** @throws Problem 403 at /personId */
export function requireMayLogFor(actor: Actor, personId: string): void {
  const only = onlyPerson(actor);
  if (only === null || only === personId.toLowerCase()) return;
  throw new Problem('not-allowed', 'Crew log and see their own hours. Those of others are logged by a crew lead or the office: give them these hours, which are kept nowhere yet.', [{ pointer: '/personId', detail: 'must be your own id' }]);
}

/** An entry that the actor may not see answers as one that is not there. @throws Problem 404 */
export function requireMaySee(actor: Actor, row: TimeEntryEntity): void {
  const only = onlyPerson(actor);
  if (only !== null && only !== row.personId) throw notFound('time entry');
}
