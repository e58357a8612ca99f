import { openApiDocument } from '../../src/platform/http/openapi.js';
import { fill, type Route, signedInRoutes, thingOf } from '../support/routes.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { type Client, makeTestCompany, type TestCompany } from '../support/test-company.js';
import { bodiesFor, makeWorld, type World } from '../support/world.js';

/** Names of fields that would hold a cost, a price, a wage or a margin. A cost code is a name of work, not money. */
const MONEY_NAME = /(cost(?!code)|price|wage|margin|amount|markup|burden|sellRate|contract(Total|Tax)|(net|gross|tax|paid|invoiced|received)Total|balance|laborSellRate)/i;

/** Figures of the world that crew must not find anywhere, whatever the field is called. */
const SECRETS = ['412.35', '556.67', '240.00', '300.00', '187.31', '68.00', '24.00', '32.00', '38.00', '45.00', '22.5'];

describe('crew roles', () => {
  let test: TestApp;
  let company: TestCompany;
  let world: World;
  let routes: Route[];

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    world = await makeWorld(company);
    routes = signedInRoutes(openApiDocument(test.app));
  }, 60_000);
  afterAll(() => test.close());

  it.each(['crewLead', 'crew'] as const)('get no cost, price, wage or margin from any route: %s', async (role) => {
    const client = company[role];
    const reached: string[] = [];
    const leaks: string[] = [];
    // The walk of the other role may have finished the job; each walk logs an hour before it does the same.
    await company.owner.post(`/v1/jobs/${world['jobs']}/reopen`);
    const entry = await client.post('/v1/time-entries', { ...bodiesFor({ ...world, people: client.personId })['/v1/time-entries'], startedAt: '2026-05-12T08:00:00-04:00', endedAt: '2026-05-12T09:00:00-04:00' });
    expect([entry.status, moneyIn(entry.body)]).toEqual([201, []]);
    for (const route of routes.filter(({ path }) => path !== '/v1/sessions/current')) {
      const answer = await call(client, route);
      const name = `${route.method} ${route.path}`;
      expect([name, answer.status < 500]).toEqual([name, true]);
      if (answer.status < 300) reached.push(name);
      for (const leak of moneyIn(answer.body)) leaks.push(`${name}: ${leak}`);
      for (const secret of SECRETS) if (answer.text?.includes(`"${secret}"`)) leaks.push(`${name}: the figure ${secret}`);
    }
    expect(leaks).toEqual([]);
    expect(reached).toEqual(expect.arrayContaining(['get /v1/jobs', 'get /v1/jobs/{id}', 'get /v1/people', 'get /v1/company', 'get /v1/surveys/{id}/takeoff', 'get /v1/time-entries']));
  });

  it('may not so much as call the routes that are about money', async () => {
    for (const client of [company.crewLead, company.crew]) {
      for (const route of routes.filter(({ path }) => ['quotes', 'parts', 'labor-rules', 'costs', 'invoices', 'payments'].includes(thingOf(path)) || path.endsWith('/profitability'))) {
        const answer = await call(client, route);
        expect([route, answer.status]).toEqual([route, 403]);
      }
    }
  });

  it('sees that the walk would notice: the same walk as the owner finds money', async () => {
    const found = new Set<string>();
    for (const route of routes.filter(({ method }) => method === 'get')) {
      const answer = await call(company.owner, route);
      for (const leak of moneyIn(answer.body)) found.add(leak);
    }
    expect([...found]).toEqual(expect.arrayContaining(['hourlyWage', 'contractTotal', 'laborSellRate', 'unitCost', 'grossTotal', 'margin']));
  });

  async function call(client: Client, { method, path }: Route): Promise<{ status: number; body: unknown; text?: string }> {
    const at = fill(path, world);
    if (method === 'patch') return client.patch(at, {}, '"1"');
    if (method === 'post') return client.post(at, bodiesFor({ ...world, people: client.personId })[path] ?? {});
    return client[method](at);
  }
});

/** The names of fields that hold money. */
function moneyIn(body: unknown): string[] {
  if (Array.isArray(body)) return body.flatMap(moneyIn);
  if (typeof body !== 'object' || body === null || body instanceof Uint8Array) return [];
  return Object.entries(body).flatMap(([name, value]) => [...(MONEY_NAME.test(name) ? [name] : []), ...moneyIn(value)]);
}
