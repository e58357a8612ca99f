import { v7 as uuidv7 } from 'uuid';
import { TenantDatabase } from '../../src/platform/database/tenant-database.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { actorOf, makeTestJob } from '../support/test-job.js';

describe('costs', () => {
  let test: TestApp;
  let company: TestCompany;
  let jobId: string;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
  });
  beforeEach(async () => {
    jobId = await makeTestJob(test, company);
  });
  afterAll(() => test.close());

  const usd = (amount: string) => ({ amount, currency: 'USD' });
  const cost = (changes: object = {}) => ({
    id: uuidv7(), jobId, costCode: 'cleanout', kind: 'disposal', description: 'Sediment, two loads', amount: usd('180.00'), incurredOn: '2027-05-03',
    supplier: 'Tallgrass Compost Yard', reference: 'T-20718', ...changes,
  });
  const problem = (answer: { status: number; body: { code: string; errors: { pointer: string }[] } }) => [answer.status, answer.body.code, answer.body.errors[0]?.pointer];

  it('enters a cost and reads it back with its ETag', async () => {
    const body = cost();
    const made = await company.estimator.post('/v1/costs', body);
    expect([made.status, made.headers['etag']]).toEqual([201, '"1"']);
    expect(made.body).toEqual({ ...body, receiptId: null, voidedAt: null, voidReason: null, createdAt: expect.any(String) });
    expect((await company.owner.get(`/v1/costs/${body.id}`)).body).toEqual(made.body);
  });

  it('takes a supplier\'s credit as a cost below zero', async () => {
    const { status, body } = await company.owner.post('/v1/costs', cost({ kind: 'material', amount: usd('-42.5') }));
    expect([status, body.amount]).toEqual([201, usd('-42.50')]);
  });

  it('answers a repeated cost with the first result, even when the job was cancelled since, and another body with 409', async () => {
    const body = cost();
    const first = await company.owner.post('/v1/costs', body);
    await company.owner.post(`/v1/jobs/${jobId}/cancel`, { reason: 'Called off' });
    const again = await company.owner.post('/v1/costs', body);
    expect([first.status, again.status, again.body]).toEqual([201, 200, first.body]);
    expect(problem(await company.owner.post('/v1/costs', { ...body, amount: usd('181.00') }))).toEqual([409, 'id-taken', '/id']);
  });

  it.each([
    ['nothing', { amount: usd('0.00') }, '/amount/amount'],
    ['minus nothing', { amount: usd('-0') }, '/amount/amount'],
    ['another currency', { amount: { amount: '10.00', currency: 'EUR' } }, '/amount/currency'],
    ['a broken cent', { amount: usd('10.001') }, '/amount/amount'],
    ['a number instead of a decimal string', { amount: { amount: 10, currency: 'USD' } }, '/amount/amount'],
    ['an amount beyond all bounds', { amount: usd('1000000000000') }, '/amount/amount'],
    ['a kind that it does not know', { kind: 'lunch' }, '/kind'],
    ['a day that does not exist', { incurredOn: '2027-02-30' }, '/incurredOn'],
    ['no description', { description: '' }, '/description'],
    ['a field that it does not know', { total: '1' }, '/total'],
  ])('refuses %s', async (_, changes, pointer) => {
    expect(problem(await company.owner.post('/v1/costs', cost(changes)))).toEqual([400, 'invalid-input', pointer]);
  });

  it('names the company\'s currency when a bill is in another', async () => {
    const { body } = await company.owner.post('/v1/costs', cost({ amount: { amount: '10.00', currency: 'EUR' } }));
    expect(body.errors[0].detail).toContain('must be USD');
  });

  it('refuses a job that is not there or another company\'s, and takes a cost code that nobody planned', async () => {
    const other = await makeTestCompany(test);
    for (const strange of [uuidv7(), await makeTestJob(test, other)]) {
      expect(problem(await company.owner.post('/v1/costs', cost({ jobId: strange })))).toEqual([422, 'no-such-reference', '/jobId']);
    }
    expect((await company.owner.post('/v1/costs', cost({ costCode: 'planting' }))).status).toBe(201);
  });

  it('takes a late bill for a finished job, and nothing for a cancelled one until it is reopened', async () => {
    await company.owner.post(`/v1/jobs/${jobId}/start`);
    await company.owner.post(`/v1/jobs/${jobId}/finish`);
    const late = await company.owner.post('/v1/costs', cost());
    expect(late.status).toBe(201);
    await company.owner.post(`/v1/jobs/${jobId}/reopen`);
    await company.owner.post(`/v1/jobs/${jobId}/cancel`, { reason: 'Called off' });
    const path = `/v1/costs/${late.body.id}`;
    const answers = [
      await company.owner.post('/v1/costs', cost()), await company.owner.patch(path, { description: 'x' }, '"1"'), await company.owner.post(`${path}/void`, { reason: 'x' }),
      await company.owner.patch(path, { jobId: await makeTestJob(test, company) }, '"1"'),
    ];
    expect(answers.map(problem)).toEqual(Array(4).fill([409, 'state-conflict', '/jobId']));
    await company.owner.post(`/v1/jobs/${jobId}/reopen`);
    expect((await company.owner.post(`${path}/void`, { reason: 'Charged twice' })).status).toBe(200);
  });

  it('changes a cost at the version that was read, under the same rules as a new one', async () => {
    const { body } = await company.owner.post('/v1/costs', cost());
    const path = `/v1/costs/${body.id}`;
    const changed = await company.owner.patch(path, { amount: { amount: '190.00' }, supplier: null }, '"1"');
    expect([changed.status, changed.headers['etag']]).toEqual([200, '"2"']);
    expect(changed.body).toMatchObject({ amount: usd('190.00'), supplier: null, reference: 'T-20718' });
    expect((await company.owner.patch(path, { kind: 'rental' }, '"1"')).status).toBe(412);
    expect(problem(await company.owner.patch(path, { amount: { currency: 'EUR' } }, '"2"'))).toEqual([400, 'invalid-input', '/amount/currency']);
    expect(problem(await company.owner.patch(path, { costCode: 'No Code' }, '"2"'))).toEqual([400, 'invalid-input', '/costCode']);
    expect((await company.owner.get(path)).body).toEqual(changed.body);
  });

  it('voids a cost with a reason once, and keeps it to be seen', async () => {
    const { body } = await company.owner.post('/v1/costs', cost());
    const path = `/v1/costs/${body.id}`;
    const voided = await company.owner.post(`${path}/void`, { reason: 'Charged twice' });
    expect(voided.body).toMatchObject({ id: body.id, voidReason: 'Charged twice', voidedAt: expect.stringMatching(/Z$/) });
    expect((await company.owner.post(`${path}/void`, { reason: 'Another' })).body).toEqual(voided.body);
    expect(problem(await company.owner.patch(path, { description: 'x' }, '"2"'))).toEqual([409, 'state-conflict', undefined]);
    const list = await company.owner.get(`/v1/costs?jobId=${jobId}`);
    expect(list.body.items).toEqual([voided.body]);
  });

  it.each(['crewLead', 'crew'] as const)('keeps every route from %s', async (role) => {
    const { body } = await company.owner.post('/v1/costs', cost());
    const path = `/v1/costs/${body.id}`;
    const crew = company[role];
    const answers = [await crew.get('/v1/costs'), await crew.get(path), await crew.post('/v1/costs', cost()), await crew.patch(path, { description: 'x' }, '"1"'), await crew.post(`${path}/void`, { reason: 'x' })];
    expect(answers.map((answer) => [answer.status, answer.body.code])).toEqual(Array(5).fill([403, 'not-allowed']));
  });

  it('hides the costs of another company', async () => {
    const { body } = await company.owner.post('/v1/costs', cost());
    const other = await makeTestCompany(test);
    const path = `/v1/costs/${body.id}`;
    const answers = [await other.owner.get(path), await other.owner.patch(path, { description: 'x' }, '"1"'), await other.owner.post(`${path}/void`, { reason: 'x' })];
    expect(answers.map((answer) => answer.status)).toEqual([404, 404, 404]);
    expect((await other.owner.get('/v1/costs')).body.items).toEqual([]);
  });

  it('gives the service no right to delete a cost', async () => {
    const { body } = await company.owner.post('/v1/costs', cost());
    const run = test.app.get(TenantDatabase).write(actorOf(company), (manager) => manager.query('DELETE FROM cost WHERE id = $1', [body.id]));
    await expect(run).rejects.toThrow('permission denied');
  });
});
