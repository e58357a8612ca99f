import { v7 as uuidv7 } from 'uuid';
import { Clock } from '../../src/platform/clock/clock.js';
import { TenantDatabase } from '../../src/platform/database/tenant-database.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { actorOf, makeTestJob } from '../support/test-job.js';

describe('jobs', () => {
  let test: TestApp;
  let company: TestCompany;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
  });
  afterEach(() => test.setClock(null));
  afterAll(() => test.close());

  it('shows the office what was agreed and what was planned', async () => {
    const id = await makeTestJob(test, company);
    const { status, body, headers } = await company.estimator.get(`/v1/jobs/${id}`);
    expect(status).toBe(200);
    expect(headers['etag']).toBe('"1"');
    expect(body).toMatchObject({
      id, number: 'J-1001', state: 'planned', title: 'Bring the mill pond back', quoteRevision: 1, timeZone: 'America/Detroit',
      customerId: null, siteId: null, featureId: null, startedOn: null, finishedOn: null, cancelledOn: null, cancelReason: null,
      contractTotal: { amount: '5613.11', currency: 'USD' }, contractTax: { amount: '113.88', currency: 'USD' },
      plannedHours: [{ costCode: 'cleanout', hours: '20.5' }, { costCode: 'edge', hours: '35.25' }],
      costCodes: ['cleanout', 'edge', 'filtration', 'travel', 'yard', 'warranty'],
    });
  });

  it('numbers the jobs of each company one after the other', async () => {
    const other = await makeTestCompany(test);
    const numbers: string[] = [];
    for (let i = 0; i < 3; i++) {
      const id = await makeTestJob(test, other);
      numbers.push((await other.crew.get(`/v1/jobs/${id}`)).body.number);
    }
    expect(numbers).toEqual(['J-1001', 'J-1002', 'J-1003']);
  });

  it('adds up the planned hours, purchases and price of quote lines that share a cost code', async () => {
    const id = await makeTestJob(test, company);
    const rows = await test.sql('SELECT cost_code, hours, cost, amount FROM job_plan WHERE job_id = $1 ORDER BY position', [id]);
    expect(rows).toEqual([
      { cost_code: 'cleanout', hours: '20.5000', cost: '0.0000', amount: '1394.0000' },
      { cost_code: 'edge', hours: '35.2500', cost: '556.8000', amount: '3177.8000' },
      { cost_code: 'filtration', hours: '0.0000', cost: '785.1500', amount: '1041.3100' },
    ]);
  });

  it.each(['crewLead', 'crew'] as const)('gives %s no money, in a job or in the list', async (role) => {
    const id = await makeTestJob(test, company);
    const one = await company[role].get(`/v1/jobs/${id}`);
    const list = await company[role].get('/v1/jobs');
    expect([one.status, list.status]).toEqual([200, 200]);
    expect(one.body.plannedHours).toHaveLength(2);
    for (const job of [one.body, ...list.body.items]) {
      expect(Object.keys(job).filter((name) => /amount|price|cost(?!Code)|wage|margin|total|tax/i.test(name))).toEqual([]);
    }
  });

  it('goes from planned over under way to finished, each step repeatable, on days of the site\'s zone', async () => {
    test.setClock('2027-04-13T03:58:00Z');
    const { crewLead, owner, ...other } = await makeTestCompany(test);
    const path = `/v1/jobs/${await makeTestJob(test, other)}`;
    const started = await crewLead.post(`${path}/start`);
    expect(started.body).toMatchObject({ state: 'under-way', startedOn: '2027-04-12' });
    test.setClock('2027-04-13T04:03:00Z');
    const startedAgain = await crewLead.post(`${path}/start`);
    expect(startedAgain.status).toBe(200);
    expect(startedAgain.body).toEqual(started.body);
    expect(startedAgain.headers['etag']).toBe(started.headers['etag']);
    const finished = await crewLead.post(`${path}/finish`);
    expect(finished.body).toMatchObject({ state: 'finished', startedOn: '2027-04-12', finishedOn: '2027-04-13' });
    expect((await crewLead.post(`${path}/finish`)).body).toEqual(finished.body);
    const reopened = await owner.post(`${path}/reopen`);
    expect(reopened.body).toMatchObject({ state: 'under-way', startedOn: '2027-04-12', finishedOn: null });
    expect((await owner.post(`${path}/reopen`)).body).toEqual(reopened.body);
  });

  it('says what to do when a state does not allow a step', async () => {
    const path = `/v1/jobs/${await makeTestJob(test, company)}`;
    const early = await company.owner.post(`${path}/finish`);
    expect([early.status, early.body.code]).toEqual([409, 'state-conflict']);
    expect(early.body.detail).toContain('Start it first');
    await company.owner.post(`${path}/start`);
    await company.owner.post(`${path}/finish`);
    const over = [await company.owner.post(`${path}/start`), await company.owner.post(`${path}/cancel`, { reason: 'Too late' })];
    expect(over.map((answer) => answer.status)).toEqual([409, 409]);
    expect(over.map((answer) => answer.body.detail)).toEqual([expect.stringContaining('Reopen it first'), expect.stringContaining('reopen it first')]);
  });

  it('cancels with a reason, keeps the first one when repeated, and takes the job up again', async () => {
    const path = `/v1/jobs/${await makeTestJob(test, company)}`;
    test.setClock(new Date().toISOString());
    const cancelled = await company.owner.post(`${path}/cancel`, { reason: 'The customer is selling the house' });
    expect(cancelled.body).toMatchObject({ state: 'cancelled', cancelledOn: test.app.get(Clock).today('America/Detroit'), cancelReason: 'The customer is selling the house' });
    expect((await company.owner.post(`${path}/cancel`, { reason: 'Another one' })).body).toEqual(cancelled.body);
    expect((await company.owner.post(`${path}/finish`)).status).toBe(409);
    const back = await company.owner.post(`${path}/reopen`);
    expect(back.body).toMatchObject({ state: 'planned', cancelledOn: null, cancelReason: null });
  });

  it('refuses a cancellation without a good reason', async () => {
    const path = `/v1/jobs/${await makeTestJob(test, company)}/cancel`;
    for (const body of [{}, { reason: ' ' }, { reason: 'x'.repeat(501) }, { reason: 7 }]) {
      const { status, body: problem } = await company.owner.post(path, body);
      expect([status, problem.errors[0].pointer]).toEqual([400, '/reason']);
    }
  });

  it('keeps cancelling and reopening for the office, and starting and finishing from the crew', async () => {
    const path = `/v1/jobs/${await makeTestJob(test, company)}`;
    const answers = [
      await company.crewLead.post(`${path}/cancel`, { reason: 'x' }), await company.crewLead.post(`${path}/reopen`),
      await company.crew.post(`${path}/start`), await company.crew.post(`${path}/finish`),
    ];
    expect(answers.map((answer) => answer.status)).toEqual([403, 403, 403, 403]);
  });

  it('lists by state and by quote, and refuses a state that it does not know', async () => {
    const other = await makeTestCompany(test);
    const [first, second] = [await makeTestJob(test, other), await makeTestJob(test, other)];
    await other.owner.post(`/v1/jobs/${first}/start`);
    const ids = async (query: string): Promise<string[]> => (await other.crew.get(`/v1/jobs?${query}`)).body.items.map((job: { id: string }) => job.id);
    expect(await ids('state=under-way')).toEqual([first]);
    expect(await ids('state=planned')).toEqual([second]);
    const { quoteId } = (await other.crew.get(`/v1/jobs/${second}`)).body;
    expect(await ids(`quoteId=${quoteId}`)).toEqual([second]);
    expect(await ids(`siteId=${uuidv7()}`)).toEqual([]);
    const wrong = await other.crew.get('/v1/jobs?state=asleep');
    expect([wrong.status, wrong.body.errors[0].pointer]).toEqual([400, '/state']);
  });

  it('hides the jobs of another company', async () => {
    const other = await makeTestCompany(test);
    const id = await makeTestJob(test, other);
    const answers = [
      await company.owner.get(`/v1/jobs/${id}`), await company.owner.post(`/v1/jobs/${id}/start`), await company.owner.post(`/v1/jobs/${id}/finish`),
      await company.owner.post(`/v1/jobs/${id}/reopen`), await company.owner.post(`/v1/jobs/${id}/cancel`, { reason: 'x' }),
    ];
    expect(answers.map((answer) => answer.status)).toEqual([404, 404, 404, 404, 404]);
    expect((await other.owner.get(`/v1/jobs/${id}`)).body.state).toBe('planned');
    const list = await company.owner.get('/v1/jobs?limit=200');
    expect(list.body.items.map((job: { id: string }) => job.id)).not.toContain(id);
  });

  it('gives the service no right to change a plan or to take a job away', async () => {
    const id = await makeTestJob(test, company);
    const run = (sql: string): Promise<unknown> => test.app.get(TenantDatabase).write(actorOf(company), (manager) => manager.query(sql, [id]));
    await expect(run('UPDATE job_plan SET hours = 1 WHERE job_id = $1')).rejects.toThrow('permission denied');
    await expect(run('DELETE FROM job_plan WHERE job_id = $1')).rejects.toThrow('permission denied');
    await expect(run('DELETE FROM job WHERE id = $1')).rejects.toThrow('permission denied');
  });
});
