import { type Actor, OFFICE } from '../../platform/auth/actor.js';
import type { SyncedKind } from '../../platform/sync/synced-kinds.js';

/**
 * SQL conditions on a row `t` that say whether a person keeps it. The crews of jobs are looked at in the very statement
 * that reads the rows: asked before, a row could be given to somebody who had just been taken off the job, or not be
 * given to somebody who had just come.
 */

/** @param person the parameter with the person's id, such as `$2` */
export function keeps(actor: Actor, kind: SyncedKind, person: string): string {
  return kept(actor, kind, person, 'm.left_at IS NULL');
}

/**
 * Whether the person may have a copy of a former row `t`: they are on the crew of its job, left it since a place in the
 * journal, or left it before and the row is not that job's any more. Leaving takes the rows that a job has when the
 * phone asks; one that was moved away between the two would stay on the phone for ever.
 * @param since a row of the statement with the place, its `xid` and its `seq`
 * @param now a row of the statement with the present row
 */
export function keptSince(actor: Actor, kind: SyncedKind, person: string, since: string, now: string): string {
  const left = `EXISTS (SELECT FROM history h WHERE h.company_id = m.company_id AND h.entity = 'job_member' AND h.entity_id = m.id AND (h.xid, h.seq) > (${since}.xid, ${since}.seq))`;
  const movedAway = kind.belongsTo === 'company' ? 'false' : `NOT EXISTS (SELECT FROM (SELECT ${now}.*) AS t WHERE m.job_id IN (${kind.belongsTo.jobs}))`;
  return kept(actor, kind, person, `(m.left_at IS NULL OR ${left} OR ${movedAway})`);
}

/** Whether the row is the person's own, and so kept whatever its job. */
export function isOwn({ own }: SyncedKind, person: string): string {
  return own === undefined ? 'false' : `t.${own.column} = ${person}::uuid`;
}

/** Whether the row belongs to a job. @param job the parameter with the job's id */
export function ofJob(kind: SyncedKind, job: string): string {
  if (kind.belongsTo === 'company') return 'false';
  const { jobs, rowsOf } = kind.belongsTo;
  return `(${rowsOf?.(`${job}::uuid`) ?? `${job}::uuid IN (${jobs})`})`;
}

/** Whether the person keeps no rows of the kind but their own. */
export function keepsOnlyOwn(actor: Actor, { own }: SyncedKind): boolean {
  return own?.only.includes(actor.role) === true;
}

/** Whether the person keeps all jobs of the company, whoever is on their crews. */
export function keepsAll(actor: Actor): boolean {
  return OFFICE.includes(actor.role);
}

function kept(actor: Actor, kind: SyncedKind, person: string, when: string): string {
  if (keepsOnlyOwn(actor, kind)) return isOwn(kind, person);
  if (kind.belongsTo === 'company' || keepsAll(actor)) return `${person}::uuid IS NOT NULL`;
  const onCrew = `EXISTS (SELECT FROM job_member m WHERE m.company_id = t.company_id AND m.person_id = ${person}::uuid AND ${when} AND m.job_id IN (${kind.belongsTo.jobs}))`;
  // The OR is there also for kinds of which nobody owns a row: it keeps the crews a question about one row after the
  // other, where the planner would else hold every row against every job of the person.
  return `(${isOwn(kind, person)} OR ${onCrew})`;
}
