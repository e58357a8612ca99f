import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';

describe('the company and its people', () => {
  let test: TestApp;
  let company: TestCompany;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
  });
  afterAll(() => test.close());

  it('lets the owner change settings, and nobody else', async () => {
    const changed = await company.owner.patch('/v1/company', { laborSellRate: '72.50', paperSize: 'a4', taxCategories: [{ code: 'materials', name: 'Sales tax', rate: '7' }] });
    expect(changed.status).toBe(200);
    expect(changed.body).toMatchObject({ laborSellRate: '72.50', paperSize: 'a4', taxCategories: [{ rate: '7' }], hourIncrement: '0.25' });
    expect((await company.estimator.patch('/v1/company', { name: 'Mine' })).status).toBe(403);
  });

  it('refuses settings that make no sense, each with its place', async () => {
    const cases: [object, string][] = [
      [{ timeZone: 'Mars/Olympus' }, '/timeZone'],
      [{ timeZone: '+02:00' }, '/timeZone'],
      [{ currency: 'XXZ' }, '/currency'],
      [{ hourIncrement: '0' }, '/hourIncrement'],
      [{ laborSellRate: 68 }, '/laborSellRate'],
      [{ laborSellRate: '1e5' }, '/laborSellRate'],
      [{ locale: 'not a locale' }, '/locale'],
      [{ laborTaxCategory: 'unheard-of' }, '/laborTaxCategory'],
      [{ taxCategories: [{ code: 'a', name: 'A', rate: '5' }, { code: 'a', name: 'B', rate: '6' }] }, '/taxCategories/1/code'],
      [{ taxCategories: [{ code: 'a', name: 'A', rate: '101' }] }, '/taxCategories/0/rate'],
      [{ taxCategories: [{ code: 'a', name: 'A', rate: '5', extra: 1 }] }, '/taxCategories/0/extra'],
      [{ name: null }, '/name'],
    ];
    for (const [patch, pointer] of cases) {
      const answer = await company.owner.patch('/v1/company', patch);
      expect([patch, answer.status, answer.body.errors?.[0]?.pointer]).toEqual([patch, 400, pointer]);
    }
  });

  it('shows wages to owner and estimator only, and the sell rate too', async () => {
    for (const client of [company.owner, company.estimator]) {
      expect((await client.get('/v1/people')).body.items[0]).toHaveProperty('hourlyWage');
      expect((await client.get('/v1/company')).body).toHaveProperty('laborSellRate');
    }
    for (const client of [company.crewLead, company.crew]) {
      const people = (await client.get('/v1/people')).body.items as object[];
      expect(people.length).toBe(4);
      for (const person of people) expect(Object.keys(person).sort()).toEqual(['active', 'createdAt', 'id', 'name', 'role']);
      expect((await client.get('/v1/company')).body).not.toHaveProperty('laborSellRate');
    }
  });

  it('takes each address once a company', async () => {
    const body = { name: 'First', email: 'same@fernhollow.example', role: 'crew', hourlyWage: '20.00', burdenPercent: '20' };
    expect((await company.owner.post('/v1/people', body)).status).toBe(201);
    const second = await company.owner.post('/v1/people', { ...body, name: 'Second', email: 'SAME@fernhollow.example' });
    expect([second.status, second.body.code, second.body.errors[0].pointer]).toEqual([409, 'already-there', '/email']);
  });

  it('never leaves a company without an active owner', async () => {
    const path = `/v1/people/${company.owner.personId}`;
    for (const patch of [{ role: 'crew' }, { active: false }]) {
      const answer = await company.owner.patch(path, patch);
      expect([answer.status, answer.body.code]).toEqual([409, 'state-conflict']);
    }
    expect((await company.owner.patch(`/v1/people/${company.estimator.personId}`, { role: 'owner' })).status).toBe(200);
    expect((await company.owner.patch(path, { role: 'estimator' })).status).toBe(200);
  });
});
