import { v7 as uuidv7 } from 'uuid';
import { acceptWorkedExample } from '../support/accepted-work.js';
import { statementsDuring } from '../support/count-statements.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { type Client, makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestJob } from '../support/test-job.js';

const usd = (amount: string) => ({ amount, currency: 'USD' });

describe('the profitability of a job', () => {
  let test: TestApp;
  let company: TestCompany;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
  });
  afterAll(() => test.close());

  const of = async (jobId: string) => (await company.owner.get(`/v1/jobs/${jobId}/profitability`).expect(200)).body;

  const log = async (jobId: string, person: Client, startedAt: string, endedAt: string, changes: object = {}): Promise<string> =>
    (await company.owner.post('/v1/time-entries', { jobId, personId: person.personId, costCode: 'cleanout', startedAt, endedAt, ...changes }).expect(201)).body.id as string;

  const spend = async (jobId: string, kind: string, amount: string): Promise<string> =>
    (await company.owner.post('/v1/costs', { jobId, costCode: 'cleanout', kind, description: `Test ${kind}`, amount: usd(amount), incurredOn: '2027-05-03' }).expect(201)).body.id as string;

  it('is the whole contract before anything was charged or billed', async () => {
    const zero = usd('0.00');
    expect(await of(await makeTestJob(test, company))).toEqual({
      contractTotal: usd('5613.11'), invoicedTotal: zero, receivedTotal: zero,
      costs: { labor: zero, material: zero, disposal: zero, rental: zero, subcontract: zero, other: zero, total: zero },
      margin: usd('5613.11'), marginPercent: '100.00',
      hours: { planned: '55.75', actual: '0', byCostCode: [{ costCode: 'cleanout', planned: '20.5', actual: '0' }, { costCode: 'edge', planned: '35.25', actual: '0' }] },
    });
  });

  it('follows the worked example from the quote over hours and purchases to the last payment', async () => {
    const own = await makeTestCompany(test);
    const { jobId } = await acceptWorkedExample(own);
    const path = `/v1/jobs/${jobId}/profitability`;
    const entry = (person: Client, costCode: string, startedAt: string, endedAt: string) => own.owner.post('/v1/time-entries', { jobId, personId: person.personId, costCode, startedAt, endedAt, unpaidBreakMinutes: 30 }).expect(201);
    await entry(own.crew, 'cleanout', '2027-05-03T07:30:00-04:00', '2027-05-03T16:00:00-04:00');
    await entry(own.crewLead, 'cleanout', '2027-05-03T07:30:00-04:00', '2027-05-03T16:20:00-04:00');
    await entry(own.crew, 'travel', '2027-05-04T07:00:00-04:00', '2027-05-04T08:15:00-04:00');
    const charge = (kind: string, costCode: string, amount: string) => own.owner.post('/v1/costs', { jobId, kind, costCode, description: `Test ${kind}`, amount: usd(amount), incurredOn: '2027-05-03' }).expect(201);
    await charge('material', 'filtration', '785.15');
    await charge('material', 'liner', '556.80');
    await charge('material', 'liner', '-42.50');
    await charge('disposal', 'cleanout', '180.00');
    await charge('rental', 'cleanout', '95.25');
    await charge('subcontract', 'edge', '300.00');
    await charge('other', 'travel', '12.34');
    const invoice = await own.owner.post('/v1/invoices', { jobId, basis: 'final' }).expect(201);
    expect((await own.owner.get(path)).body.invoicedTotal).toEqual(usd('0.00'));
    await own.owner.post(`/v1/invoices/${invoice.body.id}/issue`).expect(200);
    await own.owner.post('/v1/payments', { invoiceId: invoice.body.id, amount: usd('2000.00'), receivedOn: '2027-06-01', method: 'check' }).expect(201);
    const { body } = await own.estimator.get(path);
    // Crew 8 h and 0.75 h at 24.00, crew lead 8 h 20 min at 32.00, each with 22.5 % burden:
    // (8.75 × 24 + 25/3 × 32) × 1.225 = 257.25 + 326.6667 = 583.92. Worked by hand.
    expect(body).toEqual({
      contractTotal: usd('5613.11'), invoicedTotal: usd('5613.11'), receivedTotal: usd('2000.00'),
      costs: { labor: usd('583.92'), material: usd('1299.45'), disposal: usd('180.00'), rental: usd('95.25'), subcontract: usd('300.00'), other: usd('12.34'), total: usd('2470.96') },
      margin: usd('3142.15'), marginPercent: '55.98',
      hours: {
        planned: '55.75', actual: '17.0833',
        byCostCode: [{ costCode: 'cleanout', planned: '20.5', actual: '16.3333' }, { costCode: 'edge', planned: '35.25', actual: '0' }, { costCode: 'travel', planned: '0', actual: '0.75' }],
      },
    });
  });

  it('rounds labor once on its sum, not a cent a time on many short entries', async () => {
    const jobId = await makeTestJob(test, company);
    // 50 s × 24.00 / 3,600 × 1.225 = 0.40833… each; seven are 2.85833…, and 2.87 if each were rounded first.
    const second = (n: number): string => new Date(Date.UTC(2027, 5, 1, 12, n)).toISOString();
    const until = (n: number): string => new Date(Date.UTC(2027, 5, 1, 12, n, 50)).toISOString();
    for (let n = 0; n < 7; n++) await log(jobId, company.crew, second(n), until(n));
    expect((await of(jobId)).costs.labor).toEqual(usd('2.86'));
  });

  it('adds thirds of a minute up without losing any', async () => {
    const jobId = await makeTestJob(test, company);
    for (let n = 0; n < 3; n++) await log(jobId, company.crew, new Date(Date.UTC(2027, 5, 2, 12, n)).toISOString(), new Date(Date.UTC(2027, 5, 2, 12, n, 20)).toISOString());
    const { hours, costs } = await of(jobId);
    // One minute: 24.00 × 1.225 / 60 = 0.49.
    expect([hours.actual, costs.labor]).toEqual(['0.0167', usd('0.49')]);
  });

  it('leaves voided hours and costs out', async () => {
    const jobId = await makeTestJob(test, company);
    const hour = await log(jobId, company.crew, '2027-06-03T08:00:00-04:00', '2027-06-03T09:00:00-04:00');
    const bill = await spend(jobId, 'rental', '95.25');
    expect((await of(jobId)).costs.total).toEqual(usd('124.65'));
    await company.owner.post(`/v1/time-entries/${hour}/void`, { reason: 'Wrong day' }).expect(200);
    await company.owner.post(`/v1/costs/${bill}/void`, { reason: 'Charged twice' }).expect(200);
    const { costs, hours } = await of(jobId);
    expect([costs.total, hours.actual]).toEqual([usd('0.00'), '0']);
  });

  it('shows a loss below zero', async () => {
    const jobId = await makeTestJob(test, company, { contractTotal: '300.00' });
    await spend(jobId, 'subcontract', '400.00');
    expect(await of(jobId)).toMatchObject({ margin: usd('-100.00'), marginPercent: '-33.33' });
  });

  it('has no percentage of a contract of nothing', async () => {
    const jobId = await makeTestJob(test, company, { contractTotal: '0' });
    await spend(jobId, 'material', '10.00');
    expect(await of(jobId)).toMatchObject({ margin: usd('-10.00'), marginPercent: null });
  });

  it('asks the database as often for a job with many hours and bills as for one with an hour', async () => {
    const [little, full] = [await makeTestJob(test, company), await makeTestJob(test, company)];
    await log(little, company.crew, '2027-09-01T12:00:00Z', '2027-09-01T13:00:00Z');
    for (let n = 0; n < 10; n++) {
      await log(full, company.crew, new Date(Date.UTC(2027, 6, 1, n)).toISOString(), new Date(Date.UTC(2027, 6, 1, n, 30)).toISOString(), { costCode: n % 2 ? 'edge' : 'yard' });
      await spend(full, n % 2 ? 'material' : 'other', '1.00');
    }
    const forLittle = await statementsDuring(test, () => of(little));
    const forFull = await statementsDuring(test, () => of(full));
    expect(forFull).toEqual(forLittle);
    expect(forFull.filter((statement) => /FROM "?(job|job_plan|time_entry|cost|invoice)"?\b/.test(statement))).toHaveLength(6);
  });

  it('lists jobs, hours and costs with as many statements for many as for one', async () => {
    for (const path of ['/v1/jobs', '/v1/time-entries', '/v1/costs']) {
      const one = await statementsDuring(test, () => company.owner.get(`${path}?limit=1`).expect(200));
      const many = await statementsDuring(test, async () => expect((await company.owner.get(`${path}?limit=200`).expect(200)).body.items.length).toBeGreaterThan(5));
      expect([path, many.length]).toEqual([path, one.length]);
    }
  });

  it('is for the office only', async () => {
    const jobId = await makeTestJob(test, company);
    const answers = [await company.crewLead.get(`/v1/jobs/${jobId}/profitability`), await company.crew.get(`/v1/jobs/${jobId}/profitability`)];
    expect(answers.map((answer) => [answer.status, answer.body.code])).toEqual([[403, 'not-allowed'], [403, 'not-allowed']]);
  });

  it('answers 404 alike for another company\'s job and for none', async () => {
    const other = await makeTestCompany(test);
    const answers = [await company.owner.get(`/v1/jobs/${await makeTestJob(test, other)}/profitability`), await company.owner.get(`/v1/jobs/${uuidv7()}/profitability`)];
    expect(answers.map((answer) => [answer.status, answer.body.detail])).toEqual(Array(2).fill([404, 'There is no job with this id. Check the id, or list what is there.']));
  });
});
