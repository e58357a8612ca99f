import { MutationKinds } from '../../src/platform/sync/mutation-kinds.js';
import { SyncedKinds } from '../../src/platform/sync/synced-kinds.js';
import { ofJob } from '../../src/features/sync/scope.js';
import { PUSHED_KINDS } from '../../src/features/sync/push/pushed-kinds.js';
import { openApiDocument } from '../../src/platform/http/openapi.js';
import { startTestApp, type TestApp } from '../support/test-app.js';

interface Route {
  readonly description: string;
  readonly requestBody: { readonly content: Record<string, { readonly schema: { readonly $ref: string } }> };
}

/** The documented fields of a body, in the order of the alphabet. */
function fieldsOf(body: { readonly prototype: object }): string[] {
  const names = Reflect.getMetadata('swagger/apiModelPropertiesArray', body.prototype) as readonly string[];
  return [...new Set(names.map((name) => name.slice(1)))].sort();
}

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

  it('have the body and the roles of the route that the contract names for each, beside the `id` of what they change', () => {
    // The library's type leaves open, at each step, whether it is a reference: narrowed to what the lines below read.
    const document = openApiDocument(test.app) as unknown as { paths: Record<string, Record<string, Route>>; components: { schemas: Record<string, { properties: object }> } };
    const withoutInRoute: Record<string, readonly string[]> = { 'punch-item.change': ['jobId'], 'time-entry.start': ['breaks', 'endedAt', 'recordedAt', 'sentAt', 'unpaidBreakMinutes'] };
    for (const { kind, body, roles } of test.app.get(MutationKinds).all()) {
      const named = PUSHED_KINDS[kind]?.route ?? '';
      const [method = '', path = ''] = named.split(' ');
      const route = document.paths[path]?.[method.toLowerCase()];
      const [content] = Object.values(route?.requestBody.content ?? {});
      const fields = Object.keys(document.components.schemas[content?.schema.$ref.split('/').at(-1) ?? '']?.properties ?? {}).filter((field) => !(withoutInRoute[kind] ?? []).includes(field));
      expect([kind, named, fieldsOf(body)]).toEqual([kind, named, [...new Set([...fields, 'id'])].sort()]);
      expect([kind, route?.description]).toEqual([kind, expect.stringMatching(new RegExp(`Roles: ${roles.join(', ')}\\.$`))]);
    }
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

  it('find the rows of one job without asking every row of the company for its jobs', async () => {
    for (const kind of test.app.get(SyncedKinds).all()) {
      const plan = await test.sql<{ 'QUERY PLAN': string }>(`EXPLAIN SELECT FROM "${kind.table}" t WHERE t.company_id = uuidv7() AND ${ofJob(kind, "'0190a5c0-0000-7000-8000-000000000001'")}`);
      expect([kind.kind, plan.map((line) => line['QUERY PLAN']).filter((line) => line.includes('SubPlan'))]).toEqual([kind.kind, []]);
    }
  });
});
