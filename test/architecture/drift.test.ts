import { DataSource, type EntityMetadata } from 'typeorm';
import type { ColumnMetadata } from 'typeorm/metadata/ColumnMetadata.js';
import { startTestApp, type TestApp } from '../support/test-app.js';

interface CatalogColumn {
  readonly table_name: string;
  readonly column_name: string;
  readonly type: string;
  readonly nullable: boolean;
  readonly fallback: string | null;
  readonly automatic: boolean;
}

/** The type as PostgreSQL spells it. */
function typeOf(column: ColumnMetadata): string {
  const names: Record<string, string> = { timestamptz: 'timestamp with time zone', bool: 'boolean', int: 'integer' };
  const base = names[column.type as string] ?? (column.type as string);
  const size = column.type === 'numeric' ? `(${column.precision},${column.scale})` : '';
  return base + size + (column.isArray ? '[]' : '');
}

/** A default in one spelling, whether an entity or the catalog names it. */
function fallbackOf(column: ColumnMetadata): string | null {
  const value = column.default as string | number | boolean | object | (() => string) | undefined;
  if (value === undefined) return null;
  if (typeof value === 'function') return (value as () => string)();
  if (typeof value === 'string') return `'${value}'::text`;
  return typeof value === 'object' ? `'${JSON.stringify(value)}'::jsonb` : JSON.stringify(value);
}

describe('entities and tables', () => {
  let test: TestApp;
  let entities: EntityMetadata[];
  let catalog: CatalogColumn[];

  beforeAll(async () => {
    test = await startTestApp();
    entities = test.app.get(DataSource).entityMetadatas;
    catalog = await test.sql<CatalogColumn>(
      `SELECT c.relname AS table_name, a.attname AS column_name, format_type(a.atttypid, a.atttypmod) AS type, NOT a.attnotnull AS nullable,
              CASE WHEN a.attgenerated = '' THEN pg_get_expr(d.adbin, d.adrelid) END AS fallback, a.attidentity <> '' OR a.attgenerated <> '' AS automatic
       FROM pg_attribute a JOIN pg_class c ON c.oid = a.attrelid LEFT JOIN pg_attrdef d ON d.adrelid = a.attrelid AND d.adnum = a.attnum
       WHERE c.relnamespace = 'public'::regnamespace AND c.relkind = 'r' AND a.attnum > 0 AND NOT a.attisdropped`,
    );
  });
  afterAll(() => test.close());

  it('have the same columns, types, nullability and defaults', () => {
    const declared = entities.flatMap((entity) =>
      entity.columns.map((column) => ({ table: entity.tableName, column: column.databaseName, type: typeOf(column), nullable: column.isNullable, fallback: column.asExpression === undefined ? fallbackOf(column) : null })),
    );
    const tables = new Set(entities.map((entity) => entity.tableName));
    const there = catalog
      .filter((row) => tables.has(row.table_name))
      .map((row) => ({ table: row.table_name, column: row.column_name, type: row.type, nullable: row.nullable, fallback: row.fallback }));
    const sorted = (rows: typeof there): string[] => rows.map((row) => JSON.stringify(row)).sort();
    expect(sorted(declared)).toEqual(sorted(there));
  });

  it('leave no table without an entity, but those that only SQL touches', () => {
    const mapped = new Set(entities.map((entity) => entity.tableName));
    const unmapped = [...new Set(catalog.map((row) => row.table_name))].filter((name) => !mapped.has(name)).sort();
    expect(unmapped).toEqual(['document_counter', 'history', 'migration', 'service_secret']);
  });
});
