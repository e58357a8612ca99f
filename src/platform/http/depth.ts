import { invalidInput } from './problems.js';

/** The deepest body of ours, a polygon's point in a survey, has four levels. */
const MOST_LEVELS = 20;

/**
 * Goes through a body level by level, without recursion: what comes after recurses, and a hundred thousand lists
 * within lists, which fit into the smallest of bodies, would exhaust its stack and look like a failure on our side.
 * @throws Problem 400 when objects and lists lie deeper within each other than any body needs
 */
export function requireShallow(body: unknown): void {
  let level = [body].filter(isContainer);
  for (let depth = 1; level.length > 0; depth += 1) {
    if (depth > MOST_LEVELS) throw invalidInput([{ pointer: '', detail: `has objects and lists within each other on more than ${MOST_LEVELS} levels; no field here needs that many` }]);
    level = level.flatMap((container) => Object.values(container).filter(isContainer));
  }
}

function isContainer(value: unknown): value is object {
  return typeof value === 'object' && value !== null;
}
