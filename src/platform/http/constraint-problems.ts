import { databaseFailure } from '../database/database-errors.js';
import { Problem } from './problem.js';
import { invalidInput, noSuchReference, timeOverlap } from './problems.js';

/**
 * What a broken constraint means to the client. Constraints are named so that they can be read:
 * `fk_site__customer_id` is the field /customerId.
 * The database has the last word, since only it sees two requests at once.
 */
export function fromConstraint(error: unknown): Problem | null {
  const failure = databaseFailure(error);
  if (failure === null) return null;
  const [name, column] = split(failure.constraint);
  switch (failure.code) {
    case '23503':
      return noSuchReference(column, words(name));
    case '23505':
      return new Problem('already-there', `There is already one with this ${words(name)}.`, [{ pointer: column, detail: 'is taken already; give another value' }]);
    case '23514':
      return invalidInput([{ pointer: column, detail: 'is not as it must be' }]);
    case '23P01':
      return timeOverlap();
    case '22003':
    case '22001':
      return invalidInput([{ pointer: '', detail: 'a value is beyond the range that can be stored; give a smaller one' }]);
    case '22021':
    case '22P05':
      return invalidInput([{ pointer: '', detail: 'a text holds a character that can not be stored; remove it' }]);
    case '23001':
      return new Problem('state-conflict', 'An issued document never changes. Make a new revision instead.');
    default:
      return null;
  }
}

function split(constraint: string | null): [string, string] {
  const column = constraint?.split('__')[1] ?? '';
  return [column, column === '' ? '' : `/${column.replace(/_(\w)/g, (_, letter: string) => letter.toUpperCase())}`];
}

function words(column: string): string {
  return column.replace(/_id$/, '').replaceAll('_', ' ') || 'value';
}
