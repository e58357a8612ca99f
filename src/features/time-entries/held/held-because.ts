import type { JobEntity } from '../../jobs/index.js';
import type { Locked } from '../lock/locked-period.js';

/** Why hours count for nothing until the office releases them. */
export const HELD_REASONS = ['day-locked', 'job-finished', 'job-cancelled'] as const;
export type HeldReason = (typeof HELD_REASONS)[number];

type State = Pick<JobEntity, 'state'>;

/** What there is against hours that come in now: somebody has already worked with the figures of that day or job. */
export function heldBecause(locked: Locked, time: { readonly startedAt: Date }, job: State): HeldReason[] {
  return [...dayReason(locked, time), ...jobReason(job)];
}

/**
 * What there is against hours after a correction. Those that counted on a finished or cancelled job go on to count
 * there: the office knows them, and they would be missing in the pay until somebody looked. The job holds only what
 * did not count on it before.
 */
export function heldAfterCorrection(counted: boolean, locked: Locked, time: { readonly startedAt: Date }, job: State): HeldReason[] {
  return counted ? dayReason(locked, time) : heldBecause(locked, time, job);
}

export function isClosed({ state }: State): boolean {
  return state === 'finished' || state === 'cancelled';
}

function dayReason(locked: Locked, time: { readonly startedAt: Date }): HeldReason[] {
  return locked.holds(time) ? ['day-locked'] : [];
}

function jobReason({ state }: State): HeldReason[] {
  if (state === 'finished') return ['job-finished'];
  return state === 'cancelled' ? ['job-cancelled'] : [];
}
