import type { EntityManager, ValueTransformer } from 'typeorm';
import { type ListQuery, type Page, pageOf } from '../http/lists.js';

interface Compiled {
  readonly select: string;
  readonly columnOf: ReadonlyMap<string, string>;
  readonly transformed: readonly { readonly property: string; readonly from: (value: unknown) => unknown }[];
}

const compiled = new WeakMap<object, Compiled>();

/**
 * Reads rows of an entity with a condition written in SQL. The columns come from the entity, so they can't be
 * forgotten; the query builder's own hydration would take more time than everything else in the answer to a list.
 * @param tail what follows the columns: `WHERE …`, with the table's own column names and $1, $2, …
 */
export async function entityRows<E extends object>(manager: EntityManager, entity: new () => E, tail: string, values: readonly unknown[]): Promise<E[]> {
  const { select, transformed } = compile(manager, entity);
  const rows = await manager.query<Record<string, unknown>[]>(`${select} ${tail}`, [...values]);
  for (const row of rows) for (const { property, from } of transformed) row[property] = from(row[property]);
  return rows as E[];
}

/**
 * A page of the rows that match, newest id first.
 * @param match values by property, the company among them; undefined does not filter
 */
export async function entityPage<E extends { id: string }>(manager: EntityManager, entity: new () => E, query: ListQuery, match: object): Promise<Page<E>> {
  const { columnOf } = compile(manager, entity);
  const values: unknown[] = [];
  const conditions = Object.entries(match)
    .filter(([, value]) => value !== undefined)
    .map(([property, value]) => `"${columnOf.get(property)}" = $${values.push(value)}`);
  if (query.cursor) conditions.push(`id < $${values.push(query.cursor)}`);
  const rows = await entityRows(manager, entity, `WHERE ${conditions.join(' AND ')} ORDER BY id DESC LIMIT $${values.push(query.limit + 1)}`, values);
  return pageOf(rows, query.limit);
}

function compile(manager: EntityManager, entity: new () => object): Compiled {
  const there = compiled.get(entity);
  if (there !== undefined) return there;
  const { columns, tableName } = manager.connection.getMetadata(entity);
  const made = {
    columnOf: new Map(columns.map((column) => [column.propertyName, column.databaseName])),
    select: `SELECT ${columns.map((column) => `"${column.databaseName}" AS "${column.propertyName}"`).join(', ')} FROM "${tableName}"`,
    transformed: columns.flatMap(({ propertyName, transformer }) =>
      [transformer ?? []].flat().map((one: ValueTransformer) => ({ property: propertyName, from: (value: unknown): unknown => one.from(value) })),
    ),
  };
  compiled.set(entity, made);
  return made;
}
