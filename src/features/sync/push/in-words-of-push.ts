import { Problem } from '../../../platform/http/problem.js';
import { invalidInput } from '../../../platform/http/problems.js';

/**
 * The problem of a route as a phone needs it: with its places as they are in the mutation, and with what to do about it
 * where the route speaks of headers and other requests.
 */
export function inWordsOfPush(problem: Problem): Problem {
  const errors = problem.errors.map(({ pointer, detail }) => ({ pointer: `/body${pointer}`, detail }));
  return new Problem(problem.code, detailOf(problem, invalidInput(errors).detail), errors, problem.headers);
}

function detailOf({ code, detail }: Problem, ofPlaces: string): string {
  switch (code) {
    case 'invalid-input':
      return ofPlaces;
    case 'stale-version':
      return 'The record was changed in the meantime; `current` is how it stands. Show that to the person. What is still to be changed goes into a new mutation, with its revision as baseRevision.';
    case 'not-found':
      return `${detail} If a mutation makes it that has not come yet, push that one, and this one anew with a new id that names it in dependsOn.`;
    default:
      return detail;
  }
}
