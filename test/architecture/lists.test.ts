import { openApiDocument } from '../../src/platform/http/openapi.js';
import { statementsDuring } from '../support/count-statements.js';
import { fill, type Route, signedInRoutes } from '../support/routes.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeWorld } from '../support/world.js';

describe('lists', () => {
  let test: TestApp;
  let company: TestCompany;
  let lists: Route[];
  let entered = 0;
  let world: Readonly<Record<string, string>>;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    const document = openApiDocument(test.app);
    lists = signedInRoutes(document).filter(({ method, path }) => method === 'get' && JSON.stringify((document.paths[path] as Record<string, unknown>)['get']).includes('nextCursor'));
    world = await makeWorld(company);
  }, 60_000);
  afterAll(() => test.close());

  it('take as many statements for many rows as for one', async () => {
    expect(lists.length).toBeGreaterThanOrEqual(16);
    const count = async (): Promise<Record<string, number>> => {
      const counts: Record<string, number> = {};
      for (const { path } of lists) {
        await company.owner.get(fill(path, world));
        counts[path] = (await statementsDuring(test, async () => void (await company.owner.get(fill(path, world))))).length;
      }
      return counts;
    };
    const few = await count();
    // A week of hours is worked out from policy, rates, what was earned before and the hours, rather than listed.
    const most = (path: string): number => (path === '/v1/work-weeks' ? 7 : 4);
    expect(Object.entries(few).filter(([path, count]) => count > most(path))).toEqual([]);
    for (let i = 0; i < 3; i++) await makeWorld({ owner: company.owner, crew: { ...company.crew, personId: (await newcomer()).id } });
    expect(await count()).toEqual(few);
  }, 60_000);

  it('refuse more than 200 rows, and cursors and limits that are none', async () => {
    for (const { path } of lists) {
      for (const query of ['limit=201', 'limit=0', 'limit=-1', 'limit=1e2', 'limit=ten', 'cursor=abc', 'cursor=', 'unheard=of', 'limit=5&limit=6']) {
        const answer = await company.owner.get(`${fill(path, world)}?${query}`);
        expect([path, query, answer.status]).toEqual([path, query, 400]);
      }
    }
  });

  async function newcomer(): Promise<{ id: string }> {
    const { body } = await company.owner.post('/v1/people', { name: 'Another', email: `another-${++entered}@fernhollow.example`, role: 'crew', hourlyWage: '20.00', burdenPercent: '20' });
    return body as { id: string };
  }
});
