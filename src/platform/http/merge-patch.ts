import { validateAs } from './validation.js';
import { invalidInput } from './problems.js';

/** Applies a JSON merge patch (RFC 7396). */
export function mergePatch(target: unknown, patch: unknown): unknown {
  if (!isObject(patch)) return patch;
  const result: Record<string, unknown> = isObject(target) ? { ...target } : {};
  for (const [name, value] of Object.entries(patch)) {
    if (value === null) delete result[name];
    else result[name] = mergePatch(result[name], value);
  }
  return result;
}

/**
 * The input that a resource has after a patch, checked as a whole, so that a patch can't make what a create could not.
 * @param current the resource as the request that would make it
 */
export async function patched<T extends object>(type: new () => T, current: object, patch: unknown): Promise<T> {
  if (!isObject(patch)) throw invalidInput([{ pointer: '', detail: 'the body must be a JSON object: a merge patch of the fields to change' }]);
  if ('id' in patch) throw invalidInput([{ pointer: '/id', detail: 'the id never changes; remove it' }]);
  return validateAs(type, mergePatch(current, patch) as object);
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
