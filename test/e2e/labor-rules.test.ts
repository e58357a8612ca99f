import { v7 as uuidv7 } from 'uuid';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { CLEANOUT } from '../support/test-quote.js';

describe('labor rules', () => {
  let test: TestApp;
  let company: TestCompany;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
  });
  afterAll(() => test.close());

  it('makes a rule once, and reads it back', async () => {
    const body = { id: uuidv7(), ...CLEANOUT };
    const first = await company.estimator.post('/v1/labor-rules', body);
    const again = await company.estimator.post('/v1/labor-rules', body);
    const other = await company.estimator.post('/v1/labor-rules', { ...body, setupHours: '4' });
    expect([first.status, again.status, other.status, other.body.code]).toEqual([201, 200, 409, 'id-taken']);
    expect(first.body).toEqual({ ...body, createdAt: first.body.createdAt });
    expect(again.body).toEqual(first.body);
    expect((await company.owner.get(`/v1/labor-rules/${body.id}`)).body).toEqual(first.body);
  });

  it('changes a rule, and checks the result as a whole', async () => {
    const { body } = await company.estimator.post('/v1/labor-rules', CLEANOUT);
    const changed = await company.estimator.patch(`/v1/labor-rules/${body.id}`, { hoursPerUnit: '1.9' });
    expect([changed.status, changed.body.hoursPerUnit, changed.headers['etag']]).toEqual([200, '1.9', '"2"']);
    const mixed = await company.estimator.patch(`/v1/labor-rules/${body.id}`, { quantity: 'perimeter' });
    expect([mixed.status, mixed.body.errors[0].pointer]).toEqual([400, '/unit']);
    expect((await company.estimator.patch(`/v1/labor-rules/${body.id}`, { name: 'Late' }, '"1"')).status).toBe(412);
  });

  it.each([
    ['a unit of another kind, listing those allowed', { unit: 'ft' }, '/unit', 'ft3, yd3, m3, gal, L'],
    ['a unit for a count', { quantity: 'count', unit: 'yd3' }, '/unit', 'each'],
    ['an unknown unit', { unit: 'furlong' }, '/unit', 'must be one of'],
    ['an unknown quantity', { quantity: 'constructor' }, '/quantity', 'sedimentVolume'],
    ['hours as a number', { setupHours: 3 }, '/setupHours', 'string'],
    ['negative hours', { minimumHours: '-1' }, '/minimumHours', 'at least 0'],
    ['an exponent', { hoursPerUnit: '1e9' }, '/hoursPerUnit', 'no exponent'],
    ['a day that is none', { effectiveFrom: '2027-02-30' }, '/effectiveFrom', 'calendar day'],
    ['a cost code with spaces', { costCode: 'Clean out' }, '/costCode', 'lower-case'],
    ['an unknown field', { colour: 'green' }, '/colour', 'not a known field'],
  ])('refuses %s', async (_what, change, pointer, says) => {
    const answer = await company.estimator.post('/v1/labor-rules', { ...CLEANOUT, ...change });
    expect([answer.status, answer.body.code, answer.body.errors[0].pointer]).toEqual([400, 'invalid-input', pointer]);
    expect(answer.body.errors[0].detail).toContain(says);
  });

  it('lists the rules of one cost code', async () => {
    const { body } = await company.estimator.post('/v1/labor-rules', { ...CLEANOUT, costCode: 'planting', quantity: 'count', unit: 'each' });
    const list = await company.owner.get('/v1/labor-rules?costCode=planting');
    expect(list.body).toEqual({ items: [body], nextCursor: null });
  });

  it('is closed to the crew and to other companies', async () => {
    const { body } = await company.estimator.post('/v1/labor-rules', CLEANOUT);
    const other = await makeTestCompany(test);
    expect((await other.owner.get(`/v1/labor-rules/${body.id}`)).status).toBe(404);
    expect((await other.owner.patch(`/v1/labor-rules/${body.id}`, { name: 'Mine' }, '"1"')).status).toBe(404);
    for (const person of [company.crewLead, company.crew]) {
      expect((await person.get(`/v1/labor-rules/${body.id}`)).status).toBe(403);
      expect((await person.get('/v1/labor-rules')).status).toBe(403);
      expect((await person.post('/v1/labor-rules', CLEANOUT)).status).toBe(403);
      expect((await person.patch(`/v1/labor-rules/${body.id}`, { name: 'Mine' }, '"1"')).status).toBe(403);
    }
  });
});
