import { databaseFailure } from '../../platform/database/database-errors.js';
import { Problem } from '../../platform/http/problem.js';

/** A person runs one entry at most, and not from within other hours. */
export function runsAlready(pointer: string): Problem {
  return new Problem('time-overlap', 'The person has hours that run already, or is logged for that moment. Stop the running hours first, or change the start.', [
    { pointer, detail: 'lies in another entry of the same person, or another entry runs' },
  ]);
}

/** Says of a change that gave running hours to somebody who runs others what is wrong with it. @throws Problem 409 at /personId */
export async function refusingSecondRun<T>(change: Promise<T>): Promise<T> {
  try {
    return await change;
  } catch (error) {
    if (databaseFailure(error)?.constraint === 'uq_time_entry__person_id') throw runsAlready('/personId');
    throw error;
  }
}
