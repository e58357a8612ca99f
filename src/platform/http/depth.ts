import { invalidInput } from './problems.js';

/** The deepest body of ours, a polygon's point in a survey, has four levels. */
const MOST_LEVELS = 20;
/** Ten times what the largest body of ours has: a survey with 5,000 readings, each with its place. */
const MOST_CONTAINERS = 100_000;

/**
 * Goes through a body level by level, without recursion: what comes after recurses, and a hundred thousand lists
 * within lists, which fit into the smallest of bodies, would exhaust its stack and look like a failure on our side.
 * A million empty lists side by side would keep the service busy for a second.
 * @throws Problem 400 when objects and lists are deeper within each other, or more, than any body needs
 */
export function requireShallow(body: unknown): void {
  let level: object[] = isContainer(body) ? [body] : [];
  let count = 0;
  for (let depth = 1; level.length > 0; depth += 1) {
    count += level.length;
    if (depth > MOST_LEVELS) throw invalidInput([{ pointer: '', detail: `has objects and lists within each other on more than ${MOST_LEVELS} levels; no field here needs that many` }]);
    if (count > MOST_CONTAINERS) throw invalidInput([{ pointer: '', detail: `holds more than ${MOST_CONTAINERS} objects and lists; send less at once` }]);
    level = containersIn(level);
  }
}

function containersIn(level: readonly object[]): object[] {
  const inner: object[] = [];
  for (const container of level) {
    const values: readonly unknown[] = Array.isArray(container) ? container : Object.values(container);
    for (const value of values) if (isContainer(value)) inner.push(value);
  }
  return inner;
}

function isContainer(value: unknown): value is object {
  return typeof value === 'object' && value !== null;
}
