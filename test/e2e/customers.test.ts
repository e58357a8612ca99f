import { v7 as uuidv7 } from 'uuid';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';

describe('customers', () => {
  let test: TestApp;
  let company: TestCompany;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
  });
  afterAll(() => test.close());

  it('makes a customer and reads it back with its ETag', async () => {
    const made = await company.estimator.post('/v1/customers', { name: 'Marta Ellingsworth', concerns: 'Mosquitoes' });
    expect(made.status).toBe(201);
    expect(made.headers['etag']).toBe('"1"');
    const read = await company.crew.get(`/v1/customers/${made.body.id}`);
    expect(read.status).toBe(200);
    expect(read.body).toEqual(made.body);
    expect(read.body.email).toBeNull();
  });

  it('answers the same create with the first result, and another body with 409', async () => {
    const body = { id: uuidv7(), name: 'Otto Brandel' };
    const first = await company.estimator.post('/v1/customers', body);
    const again = await company.estimator.post('/v1/customers', body);
    const other = await company.estimator.post('/v1/customers', { ...body, name: 'Otto Brandl' });
    expect([first.status, again.status, other.status]).toEqual([201, 200, 409]);
    expect(again.body).toEqual(first.body);
    expect(other.body.code).toBe('id-taken');
    expect(other.body.errors[0].pointer).toBe('/id');
  });

  it('makes one customer of the same create sent many times at once', async () => {
    const body = { id: uuidv7(), name: 'Impatient Phone' };
    const answers = await Promise.all(Array.from({ length: 8 }, () => company.estimator.post('/v1/customers', body)));
    expect(answers.map((answer) => answer.status).sort()).toEqual([200, 200, 200, 200, 200, 200, 200, 201]);
    const [row] = await test.sql<{ n: string }>('SELECT count(*) AS n FROM customer WHERE id = $1', [body.id]);
    expect(row?.n).toBe('1');
  });

  it('changes a customer only at the version that was read', async () => {
    const { body } = await company.estimator.post('/v1/customers', { name: 'Lena Roth', email: 'lena@example.com' });
    const path = `/v1/customers/${body.id}`;
    const changed = await company.estimator.patch(path, { phone: '+1 555 0101', email: null }, '"1"');
    expect(changed.status).toBe(200);
    expect(changed.headers['etag']).toBe('"2"');
    expect(changed.body).toMatchObject({ name: 'Lena Roth', phone: '+1 555 0101', email: null });
    const stale = await company.estimator.patch(path, { name: 'Lena R.' }, '"1"');
    expect(stale.status).toBe(412);
    expect(stale.headers['etag']).toBe('"2"');
    const blind = await test.http().patch(path).set('authorization', `Bearer ${company.owner.token}`).set('content-type', 'application/merge-patch+json').send('{}');
    expect(blind.status).toBe(428);
    const current = await company.crew.get(path).set('if-none-match', '"2"');
    expect(current.status).toBe(304);
  });

  it('lists page by page, newest first, each customer once', async () => {
    const seen: string[] = [];
    let path: string | undefined = '/v1/customers?limit=2';
    while (path !== undefined) {
      const page: { status: number; body: { items: { id: string }[]; nextCursor: string | null }; headers: Record<string, string> } = await company.crew.get(path);
      expect(page.status).toBe(200);
      seen.push(...page.body.items.map((item) => item.id));
      path = /<([^>]+)>; rel="next"/.exec(page.headers['link'] ?? '')?.[1];
      expect(path === undefined).toBe(page.body.nextCursor === null);
    }
    expect(seen.length).toBeGreaterThanOrEqual(3);
    expect([...new Set(seen)].sort().reverse()).toEqual(seen);
  });

  it('says where and why a body is wrong', async () => {
    const answer = await company.estimator.post('/v1/customers', { name: ' ', email: 'nowhere', colour: 'green' });
    expect(answer.status).toBe(400);
    expect(answer.headers['content-type']).toContain('application/problem+json');
    expect(answer.body.errors.map((e: { pointer: string }) => e.pointer).sort()).toEqual(['/colour', '/email', '/name']);
  });

  it('hides the customers of another company', async () => {
    const other = await makeTestCompany(test);
    const { body } = await other.owner.post('/v1/customers', { name: 'Somebody else' });
    expect((await company.owner.get(`/v1/customers/${body.id}`)).status).toBe(404);
    expect((await company.owner.patch(`/v1/customers/${body.id}`, { name: 'Mine' }, '"1"')).status).toBe(404);
    const list = await company.owner.get('/v1/customers?limit=200');
    expect(list.body.items.map((item: { id: string }) => item.id)).not.toContain(body.id);
  });

  it('writes each change to the journal with its actor and what was there before', async () => {
    const { body } = await company.estimator.post('/v1/customers', { name: 'Before' });
    await company.owner.patch(`/v1/customers/${body.id}`, { name: 'After' }, '"1"');
    const rows = await test.sql('SELECT operation, actor_id, columns, before, request_id FROM history WHERE entity_id = $1 ORDER BY seq', [body.id]);
    expect(rows).toMatchObject([
      { operation: 'insert', actor_id: company.estimator.personId, columns: null },
      { operation: 'update', actor_id: company.owner.personId, columns: ['name'], before: { name: 'Before' } },
    ]);
    expect(rows[0]?.['request_id']).toMatch(/^[0-9a-f-]{36}$/);
  });
});
