import { gzipSync } from 'node:zlib';
import type { OpenAPIObject } from '@nestjs/swagger';
import { openApiDocument } from '../../src/platform/http/openapi.js';
import { fill, type Route, signedInRoutes } from '../support/routes.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, signIn, type TestCompany } from '../support/test-company.js';
import { bodiesFor, makeWorld, type World } from '../support/world.js';

const BIDI = 'a\u202eb';

describe('a hostile client', () => {
  let test: TestApp;
  let company: TestCompany;
  let world: World;
  let contract: OpenAPIObject;
  let routes: Route[];

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    world = await makeWorld(company);
    contract = openApiDocument(test.app);
    routes = signedInRoutes(contract);
  }, 60_000);
  afterAll(() => test.close());

  const takesJson = ({ method, path }: Route): boolean => {
    if (method !== 'post' && method !== 'patch') return false;
    const body = contract.paths[path]?.[method]?.requestBody as { content: object } | undefined;
    return body === undefined || Object.keys(body.content).some((type) => type.endsWith('json'));
  };
  const raw = async (path: string, body: string | Uint8Array<ArrayBuffer>, headers: Record<string, string> = {}, method = 'POST') => {
    const answer = await fetch(test.url + path, { method, body, headers: { authorization: `Bearer ${company.owner.token}`, 'content-type': 'application/json', ...headers } });
    return { status: answer.status, body: (await answer.json()) as { code: string; detail: string; errors: { pointer: string; detail: string }[] } };
  };
  const refusal = async (path: string, body: object) => {
    const answer = await company.owner.post(path, body);
    return [answer.status, answer.body.code, answer.body.errors?.[0]?.pointer];
  };

  it.each(['constructor', 'hasOwnProperty', '__proto__'])('may not name a field %s, in no route that takes a body', async (name) => {
    for (const { method, path } of routes.filter(takesJson)) {
      const type = method === 'patch' ? 'application/merge-patch+json' : 'application/json';
      for (const [body, pointer] of [[`{"${name}": 1}`, `/${name}`], [`{"name": {"${name}": {"a": 1}}}`, `/name/${name}`]] as const) {
        const answer = await raw(fill(path, world), body, { 'content-type': type, 'if-match': '"1"' }, method.toUpperCase());
        expect([path, answer.status, answer.body.errors[0]?.pointer]).toEqual([path, 400, pointer]);
      }
    }
  });

  it.each(['after', 'constructor', 'toString', '__proto__'])('may not filter a list by %s', async (name) => {
    for (const { path } of routes.filter(({ method, path }) => method === 'get' && !path.includes('{') && `${path}/{id}` in contract.paths)) {
      const answer = await company.owner.get(`${path}?${name}=x`);
      expect([path, answer.status, answer.body.errors?.[0]?.pointer]).toEqual([path, 400, `/${name}`]);
    }
  });

  it('is not waited for when it sends a hundred thousand fields', async () => {
    const fields = (count: number): object => Object.fromEntries(Array.from({ length: count }, (_, i) => [`f${i}`, 1]));
    expect(await refusal('/v1/customers', { name: 'Marta', ...fields(100_000) })).toEqual([400, 'invalid-input', '']);
    expect(await refusal('/v1/quotes', { title: 'A pond', other: [fields(201)] })).toEqual([400, 'invalid-input', '/other/0']);
    expect(await refusal('/v1/customers', { name: 'Marta', ['n'.repeat(201)]: 1 })).toEqual([400, 'invalid-input', '']);
  });

  it('can not send anything but JSON', async () => {
    for (const type of ['text/plain', 'application/x-www-form-urlencoded', 'multipart/form-data; boundary=b', 'application/xml']) {
      const answer = await raw('/v1/customers', 'name=Marta', { 'content-type': type });
      expect([type, answer.status, answer.body.code]).toEqual([type, 415, 'wrong-media-type']);
    }
    const zipped = await raw('/v1/customers', new Uint8Array(gzipSync('{"name": "Marta"}')), { 'content-encoding': 'gzip' });
    expect([zipped.status, zipped.body.detail]).toEqual([415, expect.stringContaining('uncompressed')]);
  });

  it('is told what is wrong with bytes that are no text, and that nothing is no body', async () => {
    const broken = await raw('/v1/customers', new Uint8Array([...Buffer.from('{"name": "'), 0xff, 0xfe, ...Buffer.from('"}')]));
    expect([broken.status, broken.body.code, broken.body.detail]).toEqual([400, 'malformed-request', expect.stringContaining('UTF-8')]);
    const cut = await raw('/v1/customers', '{"name": "Mar');
    expect([cut.status, cut.body.code, cut.body.detail]).toEqual([400, 'malformed-request', expect.stringContaining('position')]);
    const none = await raw('/v1/customers', '');
    expect([none.status, none.body.errors[0]?.pointer]).toEqual([400, '/name']);
    const address = await fetch(`${test.url}/v1/customers/%ff`, { headers: { authorization: `Bearer ${company.owner.token}` } });
    expect([address.status, ((await address.json()) as { detail: string }).detail]).toEqual([400, expect.stringContaining('is not a valid url')]);
  });

  it.each([
    ['an e-mail address', '/v1/customers', { name: 'Marta', email: `${BIDI}@example.com` }, '/email'],
    ['a finding', '/v1/surveys', { findings: ['Leak', BIDI] }, '/findings/1'],
    ['a setting', '/v1/equipment', { settings: { timer: BIDI } }, '/settings/timer'],
    ['a name', '/v1/customers', { name: 'a\u061cb' }, '/name'],
    ['a second line', '/v1/customers', { name: 'a\u2028b' }, '/name'],
    ['nothing that can be seen', '/v1/customers', { name: '\u200b \ufeff' }, '/name'],
    ['a NUL', '/v1/customers', { name: 'Marta', email: 'a\u0000@example.com' }, '/email'],
    ['half a character', '/v1/customers', { name: 'Marta', email: 'a\ud800@example.com' }, '/email'],
  ])('can not hide control characters in %s', async (_name, path, body, pointer) => {
    expect(await refusal(path, { ...bodiesFor(world)[path], ...body })).toEqual([400, 'invalid-input', pointer]);
  });

  it.each([['labor', '/v1/quotes'], ['parts', '/v1/quotes'], ['other', '/v1/quotes']])('can not put a list into the list %s', async (list, path) => {
    expect(await refusal(path, { title: 'A pond', [list]: [[]] })).toEqual([400, 'invalid-input', `/${list}/0`]);
    const item = (bodiesFor(world)[path] as Record<string, unknown[]>)[list]?.[0];
    expect(await refusal(path, { title: 'A pond', [list]: [[item]] })).toEqual([400, 'invalid-input', `/${list}/0`]);
  });

  it.each([[[null]], [[]], [[{ kind: 'pump' }]], [3], ['pump']])('can not give a part the attributes %j', async (attributes) => {
    expect(await refusal('/v1/parts', { ...bodiesFor(world)['/v1/parts'], attributes })).toEqual([400, 'invalid-input', '/attributes']);
  });

  it('can not make a tax category of a list', async () => {
    const answer = await company.owner.patch('/v1/company', { taxCategories: [[]] });
    expect([answer.status, answer.body.errors[0].pointer]).toEqual([400, '/taxCategories/0']);
  });

  it('can not set a password that signing in would not take', async () => {
    for (const odd of ['\t', '\n', '\u202e', '\u0000', '\ud800']) {
      expect(await refusal(`/v1/people/${company.crew.personId}/password`, { password: `seven herons ${odd} on a ledge` })).toEqual([400, 'invalid-input', '/password']);
    }
    const person = await company.owner.post('/v1/people', { ...bodiesFor(world)['/v1/people'], email: 'marks@fernhollow.example' });
    const password = 'a\u0302\u0301e\u0302\u0301o\u0302\u0301b'.repeat(30);
    expect((await company.owner.post(`/v1/people/${person.body.id}/password`, { password })).status).toBe(204);
    await signIn(test, 'marks@fernhollow.example', password);
  });

  it('still gets the profitability of a job whose costs are absurd', async () => {
    const cost = { ...bodiesFor(world)['/v1/costs'], amount: { amount: '999999999999.99', currency: 'USD' } };
    for (let i = 0; i < 2; i += 1) expect((await company.owner.post('/v1/costs', cost)).status).toBe(201);
    const { status, body } = await company.owner.get(`/v1/jobs/${world['jobs']}/profitability`);
    expect([status, body.costs.disposal.amount]).toEqual([200, '2000000000187.29']);
  });

  it('is told which line of a quote takes more hours than can be planned', async () => {
    const rule = await company.owner.post('/v1/labor-rules', { ...bodiesFor(world)['/v1/labor-rules'], quantity: 'waterVolume', unit: 'L', hoursPerUnit: '10000' });
    const { status, body } = await company.owner.post('/v1/quotes', { title: 'A pond', surveyId: world['surveys'], labor: [{ costCode: 'cleanout', ruleId: rule.body.id }] });
    expect([status, body.errors[0].pointer, body.errors[0].detail]).toEqual([400, '/labor/0/quantity', expect.stringContaining('hours per unit')]);
  });

  it.each([
    ['no unit', { outline: { shape: 'ellipse', length: { value: 24 }, width: { value: 16, unit: 'ft' } } }, '/outline/length/unit', 'The unit is missing; use one of in, ft'],
    ['a length of nothing', { outline: { shape: 'rectangle', length: { value: 5e-324, unit: 'mm' }, width: { value: 16, unit: 'ft' } } }, '/outline/length/value', 'above 0'],
    ['a length that no tape reads', { outline: { shape: 'rectangle', length: { value: 1e-9, unit: 'ft' }, width: { value: 16, unit: 'ft' } } }, '/outline/length/value', 'at least 1 mm'],
    ['a reading beyond the earth', { probes: { unit: 'in', readings: [{ at: [1e308, -1e308], toSediment: 1, toBottom: 2 }] } }, '/probes/readings/0/at', 'within 10 km'],
  ])('can not survey a pond with %s', async (_name, change, pointer, advice) => {
    const { status, body } = await company.owner.post('/v1/surveys', { ...bodiesFor(world)['/v1/surveys'], ...change });
    expect([status, body.errors[0].pointer, body.errors[0].detail]).toEqual([400, pointer, expect.stringContaining(advice)]);
  });
});
