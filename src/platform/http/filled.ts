/**
 * A body as plain data without what was left empty: a field that is missing and one that is null mean the same, so
 * only one of the two is ever stored and compared.
 */
export function filled<T>(value: T): T {
  if (Array.isArray(value)) return value.map(filled) as T;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, inner]) => inner !== null && inner !== undefined)
      .map(([name, inner]) => [name, filled(inner)]),
  ) as T;
}
