import { v7 as uuidv7 } from 'uuid';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { usd } from '../support/test-quote.js';

let made = 0;
const part = (change: object = {}) => ({ sku: `P-${++made}`, name: 'Underlayment', unit: 'ft2', unitCost: usd('0.87'), markupPercent: '40', taxCategory: 'materials', ...change });

describe('parts', () => {
  let test: TestApp;
  let company: TestCompany;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
  });
  afterAll(() => test.close());

  it('enters a part once, and reads it back', async () => {
    const body = { id: uuidv7(), ...part() };
    const first = await company.estimator.post('/v1/parts', body);
    const again = await company.estimator.post('/v1/parts', body);
    const other = await company.estimator.post('/v1/parts', { ...body, markupPercent: '41' });
    expect([first.status, again.status, other.status, other.body.code]).toEqual([201, 200, 409, 'id-taken']);
    expect(first.body).toEqual({ ...body, packSize: '1', active: true, attributes: null, createdAt: first.body.createdAt });
    expect(again.body).toEqual(first.body);
    expect((await company.owner.get(`/v1/parts/${body.id}`)).body).toEqual(first.body);
    expect((await company.owner.get(`/v1/parts/${body.id}/costs`)).body.items).toHaveLength(1);
  });

  it('keeps what the part cost before, and who changed it', async () => {
    const { body } = await company.estimator.post('/v1/parts', part());
    const path = `/v1/parts/${body.id}`;
    await company.owner.patch(path, { unitCost: usd('0.95') });
    await company.owner.patch(path, { name: 'Underlayment, 8 oz', markupPercent: '45' });
    const costs = await company.estimator.get(`${path}/costs`);
    expect(costs.body.items.map((item: { unitCost: object; recordedBy: string }) => [item.unitCost, item.recordedBy])).toEqual([
      [usd('0.95'), company.owner.personId],
      [usd('0.87'), company.estimator.personId],
    ]);
    const page = await company.estimator.get(`${path}/costs?limit=1`);
    const next = await company.estimator.get(`${path}/costs?limit=1&cursor=${page.body.nextCursor}`);
    expect(next.body).toEqual({ items: [costs.body.items[1]], nextCursor: null });
  });

  it('gives a stock number once in a company, and again in another one', async () => {
    const first = await company.estimator.post('/v1/parts', part({ sku: 'TWICE' }));
    const second = await company.estimator.post('/v1/parts', part({ sku: 'TWICE' }));
    expect([first.status, second.status, second.body.code, second.body.errors[0].pointer]).toEqual([201, 409, 'already-there', '/sku']);
    const third = await company.estimator.post('/v1/parts', part());
    const renamed = await company.estimator.patch(`/v1/parts/${third.body.id}`, { sku: 'TWICE' });
    expect([renamed.status, renamed.body.errors[0].pointer]).toEqual([409, '/sku']);
    const other = await makeTestCompany(test);
    expect((await other.owner.post('/v1/parts', part({ sku: 'TWICE' }))).status).toBe(201);
    expect((await other.owner.get(`/v1/parts/${first.body.id}`)).status).toBe(404);
    expect((await other.owner.get(`/v1/parts/${first.body.id}/costs`)).status).toBe(404);
    const found = await company.owner.get('/v1/parts?sku=TWICE');
    expect(found.body.items.map(({ id }: { id: string }) => id)).toEqual([first.body.id]);
  });

  it.each([
    ['a stock number with a smiling face', { sku: 'PUMP-😀' }, '/sku'],
    ['a stock number with a slash', { sku: '../etc' }, '/sku'],
    ['a cost in another currency', { unitCost: { amount: '0.87', currency: 'EUR' } }, '/unitCost/currency'],
    ['a cost with half a cent', { unitCost: usd('0.875') }, '/unitCost/amount'],
    ['a cost below zero', { unitCost: usd('-1.00') }, '/unitCost/amount'],
    ['a cost as a number', { unitCost: { amount: 0.87, currency: 'USD' } }, '/unitCost/amount'],
    ['a markup below zero', { markupPercent: '-5' }, '/markupPercent'],
    ['an empty pack', { packSize: '0' }, '/packSize'],
    ['a tax category that is not the company\'s', { taxCategory: 'luxury' }, '/taxCategory'],
    ['an unknown unit', { unit: 'pallet' }, '/unit'],
  ])('refuses %s', async (_what, change, pointer) => {
    const answer = await company.estimator.post('/v1/parts', part(change));
    expect([answer.status, answer.body.code, answer.body.errors[0].pointer]).toEqual([400, 'invalid-input', pointer]);
  });

  it('is closed to the crew', async () => {
    const { body } = await company.estimator.post('/v1/parts', part());
    for (const person of [company.crewLead, company.crew]) {
      for (const path of ['/v1/parts', `/v1/parts/${body.id}`, `/v1/parts/${body.id}/costs`]) expect((await person.get(path)).status).toBe(403);
      expect((await person.post('/v1/parts', part())).status).toBe(403);
    }
  });
});
