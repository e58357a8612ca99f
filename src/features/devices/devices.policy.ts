import { type Actor, LEADS, type Role } from '../../platform/auth/actor.js';
import { Problem } from '../../platform/http/problem.js';
import { notFound } from '../../platform/http/problems.js';
import type { DeviceEntity } from './device.entity.js';

const RANK: Readonly<Record<Role, number>> = { crew: 0, 'crew-lead': 1, estimator: 2, owner: 3 };

interface Somebody {
  readonly personId: string | null;
  readonly role: Role;
}

/**
 * Whether somebody may let a phone in for a person, or shut it out: for oneself and for those below; the owner for
 * everybody. Else a crew lead could scan a code made for the owner, and see the company's money.
 */
export function mayVouchFor(actor: Somebody, person: { readonly id: string; readonly role: Role }): boolean {
  return actor.role === 'owner' || actor.personId === person.id || (LEADS.includes(actor.role) && RANK[actor.role] > RANK[person.role]);
}

/** @throws Problem 403 */
export function requireMayVouchFor(actor: Actor, person: { readonly id: string; readonly role: Role }, pointer: string | null): void {
  if (mayVouchFor(actor, person)) return;
  const errors = pointer === null ? [] : [{ pointer, detail: 'must be yourself or somebody below your role' }];
  throw new Problem('not-allowed', `The role ${actor.role} may not do that for the devices of somebody else with the role ${person.role}. Ask the owner, or the person.`, errors);
}

/** The only person whose devices the actor sees; undefined when everybody's. */
export function onlyPerson(actor: Actor): string | undefined {
  return LEADS.includes(actor.role) ? undefined : (actor.personId ?? undefined);
}

/** A device that the actor may not see answers as one that is not there. @throws Problem 404 */
export function requireMaySee(actor: Actor, row: DeviceEntity): void {
  const only = onlyPerson(actor);
  if (only !== undefined && only !== row.personId) throw notFound('device');
}
