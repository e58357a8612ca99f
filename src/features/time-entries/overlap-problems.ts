import { databaseFailure } from '../../platform/database/database-errors.js';
import { Problem } from '../../platform/http/problem.js';
import type { TimeEntryEntity } from './time-entry.entity.js';

/**
 * Why hours were not taken that are at odds with others of the person.
 * @param there the entry in the way, so that somebody who does not see it on their phone can find it; null when it was
 *   voided meanwhile
 * @param pointer the field of the request that can be changed about it
 */
export function overlapping(time: Pick<TimeEntryEntity, 'endedAt'>, there: Pick<TimeEntryEntity, 'id' | 'startedAt' | 'endedAt'> | null, pointer = '/startedAt'): Problem {
  const detail = there === null ? 'overlaps an entry of the same person' : `${there.endedAt === null ? 'another entry of the same person runs' : 'overlaps another entry of the same person'}: ${told(there)}`;
  if (time.endedAt === null) return new Problem('time-overlap', 'The person has hours that run already, or is logged for that moment. Stop the running hours first, or change the start.', [{ pointer: '/startedAt', detail }]);
  return new Problem('time-overlap', 'The person is already logged for some of that time. Change the start or the end, or void the other entry.', [{ pointer, detail }]);
}

/** Says of a change that gave running hours to somebody who runs others what is wrong with it. @throws Problem 409 at /personId */
export async function refusingSecondRun<T>(change: Promise<T>): Promise<T> {
  try {
    return await change;
  } catch (error) {
    if (databaseFailure(error)?.constraint !== 'uq_time_entry__person_id') throw error;
    throw new Problem('time-overlap', 'That person has hours that run already. Stop those first.', [{ pointer: '/personId', detail: 'has hours that run already' }]);
  }
}

function told({ id, startedAt, endedAt }: Pick<TimeEntryEntity, 'id' | 'startedAt' | 'endedAt'>): string {
  return `${id}, from ${startedAt.toISOString()}${endedAt === null ? '' : ` to ${endedAt.toISOString()}`}`;
}
