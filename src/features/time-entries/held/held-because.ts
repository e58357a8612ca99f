import type { JobEntity } from '../../jobs/index.js';
import type { Locked } from '../lock/locked-period.js';
import type { WorkingPerson } from '../paid-people.js';

/** Why hours count for nothing until the office releases them. */
export const HELD_REASONS = ['day-locked', 'job-finished', 'job-cancelled', 'person-inactive'] as const;
export type HeldReason = (typeof HELD_REASONS)[number];

type State = Pick<JobEntity, 'state'>;
type Person = Pick<WorkingPerson, 'active'>;
interface Time {
  readonly startedAt: Date;
}

const NEVER_COUNTED = { onJob: false, forPerson: false };

/** What there is against hours that come in now: somebody has already worked with the figures of that day, job or person. */
export function heldBecause(locked: Locked, time: Time, job: State, person: Person): HeldReason[] {
  return heldAfterCorrection(NEVER_COUNTED, locked, time, job, person);
}

/**
 * What there is against hours after a correction. Those that counted on a finished or cancelled job, or for somebody who
 * left, go on to count there: the office knows them, and they would be missing in the pay until somebody looked. Job and
 * person hold only what did not count there before.
 */
export function heldAfterCorrection(counted: { readonly onJob: boolean; readonly forPerson: boolean }, locked: Locked, time: Time, job: State, person: Person): HeldReason[] {
  return [...dayReason(locked, time), ...(counted.onJob ? [] : jobReason(job)), ...(counted.forPerson ? [] : personReason(person))];
}

export function isClosed({ state }: State): boolean {
  return state === 'finished' || state === 'cancelled';
}

function dayReason(locked: Locked, time: Time): HeldReason[] {
  return locked.holds(time) ? ['day-locked'] : [];
}

function jobReason({ state }: State): HeldReason[] {
  if (state === 'finished') return ['job-finished'];
  return state === 'cancelled' ? ['job-cancelled'] : [];
}

function personReason({ active }: Person): HeldReason[] {
  return active ? [] : ['person-inactive'];
}
