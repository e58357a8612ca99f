import type { Actor } from '../../../platform/auth/actor.js';
import type { TimeEntryEntity } from '../time-entry.entity.js';

/**
 * Who makes a new version of an entry, when and why. Written with every change: the journal then has them for each
 * former version, and no change goes unseen that sets a value to what it was.
 */
export function changedBy(actor: Actor, now: Date, reason: string | null | undefined): Pick<TimeEntryEntity, 'changedAt' | 'changedBy' | 'changeReason'> {
  return { changedAt: now, changedBy: actor.personId, changeReason: reason ?? null };
}
