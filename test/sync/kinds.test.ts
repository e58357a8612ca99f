import { MutationKinds } from '../../src/platform/sync/mutation-kinds.js';
import { SyncedKinds } from '../../src/platform/sync/synced-kinds.js';
import { openApiDocument } from '../../src/platform/http/openapi.js';
import { startTestApp, type TestApp } from '../support/test-app.js';

describe('kinds of the sync', () => {
  let test: TestApp;

  beforeAll(async () => {
    test = await startTestApp();
  });
  afterAll(() => test.close());

  it('are the ones that the contract names', () => {
    const schemas = openApiDocument(test.app).components?.schemas as Record<string, { properties: { kind: { description: string } } }>;
    const named = (schema: string): string[] => /What it is: ([^.]*(?:\.[a-z][^.]*)*)\./.exec(schemas[schema]?.properties.kind.description ?? '')?.[1]?.split(', ') ?? [];
    expect(named('Mutation')).toEqual(test.app.get(MutationKinds).all().map(({ kind }) => kind).sort());
    expect(named('PulledItem')).toEqual(test.app.get(SyncedKinds).all().map(({ kind }) => kind));
  });

  it('pull only tables that the journal follows and whose rows have an id, a version and, if any is meant, a person', async () => {
    for (const { table, belongsTo, own } of test.app.get(SyncedKinds).all()) {
      const jobs = belongsTo === 'company' ? 'NULL::uuid' : belongsTo.jobs;
      const [row] = await test.sql<{ journal: boolean; person: boolean }>(
        `SELECT EXISTS (SELECT FROM pg_trigger WHERE tgrelid = '${table}'::regclass AND tgname = 'journal') AS journal,
                ${own === undefined ? 'true' : `(SELECT attnotnull FROM pg_attribute WHERE attrelid = '${table}'::regclass AND attname = '${own.column}')`} AS person,
                (SELECT count(*) FROM "${table}" t WHERE t.company_id = uuidv7() AND t.version > 0 AND uuidv7() IN (${jobs}) AND ${own === undefined ? 'true' : `t.${own.column} = uuidv7()`}) AS none`,
      );
      expect([table, row]).toEqual([table, { journal: true, person: true, none: '0' }]);
    }
  });
});
