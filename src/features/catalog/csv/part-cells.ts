import { DomainError, type Violation, within } from '../../../domain/errors.js';
import type { PartBody } from '../parts.dto.js';
import { PART_COLUMNS, type PartColumn } from './columns.js';

type Json = Record<string, unknown>;

/** The cells of a part, in the order of the columns. */
export function cellsOf(part: PartBody): string[] {
  return PART_COLUMNS.map(({ path, cell }) => {
    const value = path.reduce<unknown>((at, name) => (at as Json | null | undefined)?.[name], part);
    return value === null || value === undefined ? '' : cell.write(value);
  });
}

/**
 * The request that a row stands for. A column that the table does not have leaves what the part has; an empty cell is
 * no value. The attributes of another kind than the part had begin afresh.
 * @param columns of the table, in its order
 * @param before the part as it is; for a new one, what every part of the company has
 * @throws DomainError at /column for every cell that can't be read
 */
export function requestOf(columns: readonly PartColumn[], cells: readonly string[], before: Json): Json {
  const violations: Violation[] = [];
  const values = columns.map(({ name, path, cell }, i): [readonly string[], unknown] => {
    const content = cells[i] ?? '';
    try {
      return [path, content.trim() === '' ? undefined : within(`/${name}`, () => cell.read(content))];
    } catch (error) {
      if (!(error instanceof DomainError)) throw error;
      violations.push(...error.violations);
      return [path, undefined];
    }
  });
  if (violations.length > 0) throw new DomainError(violations);
  const request: Json = { ...before, attributes: keptAttributes(values, before['attributes'] as Json | null | undefined) };
  for (const [[outer = '', inner], value] of values) request[outer] = inner === undefined ? value : { ...(request[outer] as Json | undefined), [inner]: value };
  return withoutEmptyAttributes(request);
}

function keptAttributes(values: readonly (readonly [readonly string[], unknown])[], before: Json | null | undefined): Json | undefined {
  const kind = values.find(([path]) => path.join('/') === 'attributes/kind');
  return before && (kind === undefined || kind[1] === before['kind']) ? before : undefined;
}

function withoutEmptyAttributes(request: Json): Json {
  const attributes = Object.fromEntries(Object.entries((request['attributes'] as Json | undefined) ?? {}).filter(([, value]) => value !== undefined));
  return { ...request, attributes: Object.keys(attributes).length === 0 ? undefined : attributes };
}
