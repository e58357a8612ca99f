import { invalidInput, pointerBelow } from './problems.js';

/** The deepest body of ours, a polygon's point in a survey, has four levels. */
const MOST_LEVELS = 20;
/** Ten times what the largest body of ours has: a survey with 5,000 readings, each with its place. */
const MOST_CONTAINERS = 100_000;
/** The widest object of ours, the settings of an item of equipment, has 50. Work on an object grows with their square. */
const MOST_FIELDS = 200;
const LONGEST_NAME = 200;

interface Place {
  readonly value: object;
  readonly pointer: string;
}

/**
 * Goes through a body or a query level by level, without recursion: what comes after recurses, and a hundred thousand
 * lists within lists, which fit into the smallest of bodies, would exhaust its stack and look like a failure on our
 * side. A million empty lists side by side, or as many fields, would keep the service busy for seconds.
 * @throws Problem 400 when objects and lists are deeper within each other, more, or wider than any body needs, or a
 *   field bears a name that no field can have
 */
export function requireBounded(body: unknown): void {
  let level: Place[] = isContainer(body) ? [{ value: body, pointer: '' }] : [];
  let count = 0;
  for (let depth = 1; level.length > 0; depth += 1) {
    count += level.length;
    if (depth > MOST_LEVELS) throw invalidInput([{ pointer: '', detail: `has objects and lists within each other on more than ${MOST_LEVELS} levels; no field here needs that many` }]);
    if (count > MOST_CONTAINERS) throw invalidInput([{ pointer: '', detail: `holds more than ${MOST_CONTAINERS} objects and lists; send less at once` }]);
    level = level.flatMap(within);
  }
}

function within({ value, pointer }: Place): Place[] {
  const names = Object.keys(value);
  if (!Array.isArray(value)) requireFieldNames(names, pointer);
  return names.flatMap((name) => {
    const inner = (value as Record<string, unknown>)[name];
    return isContainer(inner) ? [{ value: inner, pointer: pointerBelow(pointer, name) }] : [];
  });
}

/** What every object inherits ("constructor") looks like a known field to the checks that follow, or makes them fail. */
function requireFieldNames(names: readonly string[], pointer: string): void {
  if (names.length > MOST_FIELDS) throw invalidInput([{ pointer, detail: `has ${names.length} fields; nothing here has more than ${MOST_FIELDS}` }]);
  for (const name of names) {
    if (name in Object.prototype) throw invalidInput([{ pointer: pointerBelow(pointer, name), detail: 'is not a known field; remove it, or check its spelling' }]);
    if (name.length > LONGEST_NAME) throw invalidInput([{ pointer, detail: `has a field whose name is longer than ${LONGEST_NAME} characters; remove it` }]);
  }
}

function isContainer(value: unknown): value is object {
  return typeof value === 'object' && value !== null;
}
