import { openApiDocument } from '../../src/platform/http/openapi.js';
import { fill, type Route, signedInRoutes } from '../support/routes.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { bodiesFor, makeWorld, type World } from '../support/world.js';

/** Answers alike for what another company has and for what nobody has. */
describe('another company', () => {
  let test: TestApp;
  let stranger: TestCompany;
  let mine: World;
  let theirs: World;
  let routes: Route[];

  beforeAll(async () => {
    test = await startTestApp();
    const company = await makeTestCompany(test);
    theirs = await makeWorld(company);
    stranger = await makeTestCompany(test);
    mine = await makeWorld(stranger);
    routes = signedInRoutes(openApiDocument(test.app));
  }, 60_000);
  afterAll(() => test.close());

  it('gets 404 from every route with an id of ours in its path', async () => {
    const nobody = Object.fromEntries(Object.keys(theirs).map((name) => [name, '0199c3a2-5b1e-7c44-9d0a-3f6b1c2d4e5f']));
    const walked: string[] = [];
    for (const { method, path } of routes.filter((route) => route.path.includes('{id}'))) {
      const answers = [];
      for (const ids of [theirs, nobody]) {
        const at = fill(path, ids);
        const body = bodiesFor(mine)[path] ?? {};
        answers.push(method === 'patch' ? await stranger.owner.patch(at, {}, '"1"') : method === 'post' ? await stranger.owner.post(at, body) : await stranger.owner[method](at));
      }
      const [ours, none] = answers;
      expect([method, path, ours?.status]).toEqual([method, path, 404]);
      expect({ ...(ours?.body as object), instance: '' }).toEqual({ ...(none?.body as object), instance: '' });
      walked.push(path);
    }
    expect(walked.length).toBeGreaterThan(40);
  });

  it('sees none of our rows in any list', async () => {
    const ids = new Set(Object.values(theirs));
    for (const { path } of routes.filter(({ method, path: at }) => method === 'get' && !at.includes('{'))) {
      const answer = await stranger.owner.get(path);
      expect([path, answer.status]).toEqual([path, 200]);
      for (const id of ids) expect([path, answer.text.includes(id)]).toEqual([path, false]);
    }
  });

  it('gets a 4xx with the place for an id of ours in any field of any body', async () => {
    let walked = 0;
    for (const [path, body] of Object.entries(bodiesFor(mine))) {
      for (const [pointer, foreign] of withForeignIds(body, bodiesFor(theirs)[path] ?? {})) {
        const answer = await stranger.owner.post(fill(path, mine), foreign);
        const places = ((answer.body as { errors?: { pointer: string }[] }).errors ?? []).map((error) => error.pointer);
        expect([path, pointer, answer.status, places]).toEqual([path, pointer, 422, [pointer]]);
        walked++;
      }
    }
    expect(walked).toBeGreaterThanOrEqual(12);
  });

  it('can not filter a list by an id of ours', async () => {
    for (const [list, filter] of [['sites', 'customerId'], ['features', 'siteId'], ['equipment', 'featureId'], ['surveys', 'featureId'], ['quotes', 'customerId'], ['jobs', 'siteId'], ['time-entries', 'jobId'], ['time-entries', 'personId'], ['costs', 'jobId'], ['invoices', 'jobId'], ['payments', 'invoiceId']] as const) {
      const thing = { customerId: 'customers', siteId: 'sites', featureId: 'features', jobId: 'jobs', personId: 'people', invoiceId: 'invoices' }[filter];
      const answer = await stranger.owner.get(`/v1/${list}?${filter}=${theirs[thing]}`);
      expect([list, filter, answer.status, answer.body.items]).toEqual([list, filter, 200, []]);
    }
  });
});

/** The body once for each id in it, with that id taken from the other body; and where that is. */
function* withForeignIds(body: unknown, other: unknown, pointer = '', wrap: (value: unknown) => unknown = (value) => value): Generator<[string, object]> {
  if (typeof body !== 'object' || body === null) return;
  for (const [key, value] of Object.entries(body)) {
    const inner = (other as Record<string, unknown>)[key];
    const put = (changed: unknown): unknown => wrap(Array.isArray(body) ? body.map((item: unknown, i) => (String(i) === key ? changed : item)) : { ...body, [key]: changed });
    if (/Id$/.test(key) && typeof value === 'string') yield [`${pointer}/${key}`, put(inner) as object];
    else yield* withForeignIds(value, inner, `${pointer}/${key}`, put);
  }
}
