import { type Actor, LEADS } from '../../../platform/auth/actor.js';
import { Problem } from '../../../platform/http/problem.js';
import { notFound } from '../../../platform/http/problems.js';

/** The only person whose days off the actor may enter and see; undefined when everybody's. */
export function onlyOwnDaysOff(actor: Actor): string | undefined {
  return LEADS.includes(actor.role) ? undefined : (actor.personId ?? undefined);
}

/** @throws Problem 403 at /personId */
export function requireMayEnterFor(actor: Actor, personId: string): void {
  const only = onlyOwnDaysOff(actor);
  if (only === undefined || only === personId.toLowerCase()) return;
  throw new Problem('not-allowed', 'Crew enter and see their own days off. A crew lead may do it for others.', [{ pointer: '/personId', detail: 'must be your own id' }]);
}

/** Days off that the actor may not see answer as ones that are not there. @throws Problem 404 */
export function requireMaySeeDaysOff(actor: Actor, row: { personId: string }): void {
  const only = onlyOwnDaysOff(actor);
  if (only !== undefined && only !== row.personId) throw notFound('entry of days off');
}
