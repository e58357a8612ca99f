import { DomainError } from '../../domain/errors.js';
import { Problem, type Violation } from './problem.js';

function one(what: string): string {
  return `${/^[aeiou]/i.test(what) ? 'an' : 'a'} ${what}`;
}

/** A row of another company and no row at all answer alike, so that ids can't be probed. */
export function notFound(what: string): Problem {
  return new Problem('not-found', `There is no ${what} with this id. Check the id, or list what is there.`);
}

export function idTaken(what: string, id: string): Problem {
  return new Problem('id-taken', `The id ${id} was used before for ${one(what)} with another body. Send the first body again, or take a new id.`, [
    { pointer: '/id', detail: 'was used before with another body; take a new id' },
  ]);
}

export function staleVersion(what: string, current: number): Problem {
  return new Problem('stale-version', `The ${what} was changed in the meantime and now has the ETag "${current}". Read it again, and send the change with that ETag in If-Match.`, [], { etag: `"${current}"` });
}

/** A body that is well formed but names a row that this company does not have. */
export function noSuchReference(pointer: string, what: string): Problem {
  return new Problem('no-such-reference', `The request names ${one(what)} that is not there.`, [{ pointer, detail: `there is no ${what} with this id; check the id, or list what is there` }]);
}

export function stateConflict(detail: string, errors: readonly Violation[] = []): Problem {
  return new Problem('state-conflict', detail, errors);
}

export function timeOverlap(): Problem {
  return new Problem('time-overlap', 'The person is already logged for some of that time. Change the start or the end, or void the other entry.', [
    { pointer: '/startedAt', detail: 'overlaps an entry of the same person; change the start or the end' },
  ]);
}

export function notPossible(detail: string, errors: readonly Violation[] = []): Problem {
  return new Problem('not-possible', detail, errors);
}

export function invalidInput(errors: readonly Violation[]): Problem {
  const first = errors[0];
  const more = errors.length > 1 ? ` (and ${errors.length - 1} more)` : '';
  return new Problem('invalid-input', first === undefined ? 'The request is not as it must be.' : `${first.pointer || 'The body'}: ${first.detail}${more}`, errors);
}

/** The JSON Pointer (RFC 6901) of a field below another. */
export function pointerBelow(pointer: string, name: string): string {
  return `${pointer}/${name.replaceAll('~', '~0').replaceAll('/', '~1')}`;
}

/** Runs a computation of the domain and says where in the request its complaints belong. */
export function atPointer<T>(prefix: string, compute: () => T): T {
  try {
    return compute();
  } catch (error) {
    if (error instanceof DomainError) throw invalidInput(error.violations.map((v) => ({ pointer: prefix + v.pointer, detail: v.detail })));
    throw error;
  }
}
