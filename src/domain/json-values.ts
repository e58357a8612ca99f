import { DomainError } from './errors.js';

/** A JSON object that comes from outside, not yet known to be what it claims. */
export type JsonObject = Readonly<Record<string, unknown>>;

/**
 * An object with no other properties than `known`: a misspelt "toBotom" must not pass as a missing one.
 * @throws DomainError at "" or at the unknown property
 */
export function objectOf(value: unknown, known: readonly string[]): JsonObject {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    throw DomainError.at('', `This must be an object with ${known.join(', ')}.`);
  }
  const unknown = Object.keys(value).filter((key) => !known.includes(key));
  if (unknown.length === 0) return value as JsonObject;
  throw new DomainError(
    unknown.slice(0, 10).map((key) => ({
      pointer: `/${key.slice(0, 100).replaceAll('~', '~0').replaceAll('/', '~1')}`,
      detail: `There is no such property; use ${known.join(', ')}.`,
    })),
  );
}

/** @throws DomainError (pointer "") unless `value` is a finite number; a number in a string is none */
export function finiteNumber(value: unknown): number {
  if (typeof value === 'number' && Number.isFinite(value)) return value;
  throw DomainError.at('', 'This must be a finite number.');
}

/** @throws DomainError (pointer "") unless `value` is a list of at most `most` items */
export function listOf(value: unknown, most: number): readonly unknown[] {
  if (!Array.isArray(value)) throw DomainError.at('', 'This must be a list.');
  if (value.length > most) throw DomainError.at('', `This list may have at most ${most} items.`);
  return value as unknown[];
}

/** Whether `value` is a list of two finite numbers: for thousands of them, where a place for each error costs too much. */
export function isNumberPair(value: unknown): value is readonly [number, number] {
  return Array.isArray(value) && value.length === 2 && Number.isFinite(value[0]) && Number.isFinite(value[1]);
}

/** @throws DomainError (pointer "") unless `value` is a list of two finite numbers */
export function numberPair(value: unknown): readonly [number, number] {
  if (isNumberPair(value)) return [value[0], value[1]];
  throw DomainError.at('', 'This must be a pair of finite numbers.');
}
