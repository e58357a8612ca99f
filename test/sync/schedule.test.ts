import { startTestApp, type TestApp } from '../support/test-app.js';
import { type Client, makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestJob } from '../support/test-job.js';
import { TestPhone } from './support.js';

const KINDS = ['visit', 'blocker', 'day-off'];

describe('the schedule on phones', () => {
  let test: TestApp;
  let company: TestCompany;
  let jobId: string;

  beforeAll(async () => {
    test = await startTestApp();
  });
  beforeEach(async () => {
    company = await makeTestCompany(test);
    jobId = await makeTestJob(test, company);
  });
  afterAll(() => test.close());

  const phoneOf = (client: Client): TestPhone => new TestPhone(client, test);
  /** All that is new on a phone, of the schedule alone. */
  const news = async (phone: TestPhone): Promise<TestPhone['received']> => {
    const before = phone.received.length;
    await phone.pull();
    return phone.received.slice(before).filter(({ kind }) => KINDS.includes(kind));
  };
  const plan = async (personIds: string[]): Promise<string> => (await company.owner.post('/v1/visits', { jobId, day: '2027-05-11', startTime: '07:30', lengthMinutes: 60, personIds })).body.id;
  const changes = (items: TestPhone['received']): unknown[] => items.map(({ kind, id, change }) => [kind, id, change]);

  it('brings whom a visit names the visit and what must come first, and nobody else', async () => {
    const phone = phoneOf(company.crew);
    expect(await news(phone)).toEqual([]);
    const blocker = (await company.owner.post('/v1/blockers', { jobId, kind: 'permit' })).body.id;
    const visit = await plan([company.crew.personId]);
    const items = await news(phone);
    expect(changes(items)).toEqual(expect.arrayContaining([['visit', visit, 'upsert'], ['blocker', blocker, 'upsert']]));
    const seen = items.findLast(({ kind }) => kind === 'visit')?.value;
    expect(seen).toMatchObject({ id: visit, personIds: [company.crew.personId], state: 'planned' });
    expect(seen).not.toHaveProperty('warnings');
    expect(await news(phoneOf(company.crewLead))).toEqual([]);
    await company.owner.patch(`/v1/visits/${visit}`, { personIds: [] });
    expect((await news(phone)).map(({ id, value }) => [id, value?.['personIds']])).toEqual([[visit, []]]);
  });

  it('takes the visit off the phone of whoever leaves the crew', async () => {
    const visit = await plan([company.crew.personId]);
    const phone = phoneOf(company.crew);
    await phone.pull();
    const left = await test.request('put', `/v1/jobs/${jobId}/crew`).set('authorization', `Bearer ${company.owner.token}`).send({ personIds: [] });
    expect(left.status).toBe(200);
    expect(changes(await news(phone))).toEqual([['visit', visit, 'removal']]);
  });

  it('brings everybody their own days off alone, the owner too', async () => {
    const off = (await company.owner.post('/v1/days-off', { personId: company.crew.personId, firstDay: '2027-05-10', note: 'Dentist' })).body.id;
    expect(changes(await news(phoneOf(company.crew)))).toEqual([['day-off', off, 'upsert']]);
    for (const client of [company.owner, company.crewLead]) expect(await news(phoneOf(client))).toEqual([]);
  });
});
