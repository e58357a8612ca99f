import { v7 as uuidv7 } from 'uuid';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestJob } from '../support/test-job.js';

const usd = (amount: string) => ({ amount, currency: 'USD' });

describe('opening wages', () => {
  let test: TestApp;
  let company: TestCompany;

  beforeAll(async () => {
    test = await startTestApp();
  });
  beforeEach(async () => {
    company = await makeTestCompany(test);
    await company.owner.patch(`/v1/people/${company.crew.personId}`, { hourlyWage: '25.00' });
    // Made-up state rate and insurance; the others as the table of test/published/labor-burden.test.ts has them.
    for (const [code, percent, yearlyWageCap] of [['social', '6.2', '184500'], ['health', '1.45', null], ['federal', '0.6', '7000'], ['state', '2.7', '9000'], ['insurance', '6.5', null]]) {
      await company.owner.post('/v1/burden-rates', { code, name: code, percent, yearlyWageCap, base: 'all-pay', effectiveFrom: '2027-01-01' }).expect(201);
    }
  });
  afterAll(() => test.close());

  /** Eight hours on each of some days of May 2027 in Detroit, at 25.00: 200.00 a day. */
  const days = async (jobId: string, ...list: number[]): Promise<void> => {
    for (const day of list) {
      const at = (hour: string) => `2027-05-${String(day).padStart(2, '0')}T${hour}:00-04:00`;
      await company.owner.post('/v1/time-entries', { jobId, personId: company.crew.personId, costCode: 'cleanout', startedAt: at('08:00'), endedAt: at('16:00') }).expect(201);
    }
  };
  const enter = (body: object) => company.owner.post('/v1/opening-wages', { personId: company.crew.personId, through: '2027-04-30', allPay: usd('6500.00'), ...body });
  const week = async (of: string) => (await company.owner.get(`/v1/work-weeks?of=${of}`).expect(200)).body.items[0];
  const burden = async (of: string): Promise<string[]> => (await week(of)).burden.map((one: { amount: { amount: string } }) => one.amount.amount).sort();
  const labor = async (jobId: string): Promise<string> => (await company.owner.get(`/v1/jobs/${jobId}/profitability`).expect(200)).body.costs.labor.amount;

  // C: the four rows that labor-burden.test.ts computes, through the whole service.
  it.each([
    [null, ['14.50', '27.00', '6.00', '62.00', '65.00'], '1174.50'],
    ['6500.00', ['14.50', '27.00', '3.00', '62.00', '65.00'], '1171.50'],
    ['20000.00', ['0.00', '0.00', '14.50', '62.00', '65.00'], '1141.50'],
    ['184500.00', ['0.00', '0.00', '0.00', '14.50', '65.00'], '1079.50'],
  ])('puts burden on 1,000.00 after %s as the caps have it, in the week and on the job', async (before, amounts, total) => {
    const jobId = await makeTestJob(test, company);
    if (before !== null) await enter({ allPay: usd(before) }).expect(201);
    await days(jobId, 3, 4, 5, 6, 7);
    expect([await burden('2027-05-05'), (await week('2027-05-05')).total, await labor(jobId)]).toEqual([amounts, usd(total), total]);
  });

  const earnedBefore = async (of: string): Promise<string> => {
    const { burden } = await week(of);
    return burden.find((one: { code: string }) => one.code === 'federal').working.inputs.find((input: { name: string }) => input.name === 'earned earlier in the year').value as string;
  };

  it('counts no hour twice that is kept here and was paid by their day, even in the midst of a week', async () => {
    const jobId = await makeTestJob(test, company);
    await days(jobId, 3, 4, 10, 11, 12, 17);
    await enter({ through: '2027-05-11', allPay: usd('2000.00') }).expect(201);
    // 2,000.00 by the 11th, of which 800.00 for hours kept here; 200.00 on the 12th.
    expect([await earnedBefore('2027-05-03'), await earnedBefore('2027-05-10'), await earnedBefore('2027-05-17')]).toEqual(['1200', '1600', '2200']);
  });

  it('starts from what the hours kept here come to where the opening wages are less', async () => {
    const jobId = await makeTestJob(test, company);
    await days(jobId, 3, 4, 10);
    await enter({ through: '2027-05-09', allPay: usd('399.99') }).expect(201);
    expect([await earnedBefore('2027-05-03'), await earnedBefore('2027-05-10')]).toEqual(['0', '400']);
  });

  it('counts for their own year and person only', async () => {
    const jobId = await makeTestJob(test, company);
    await enter({ through: '2026-12-31', allPay: usd('9000.00') }).expect(201);
    await enter({ personId: company.crewLead.personId, allPay: usd('9000.00') }).expect(201);
    await days(jobId, 3);
    expect(await earnedBefore('2027-05-03')).toBe('0');
  });

  it('are entered once for a person and year, changed by the owner and listed', async () => {
    const body = { id: uuidv7(), personId: company.crew.personId, through: '2027-04-30', allPay: usd('6500.00'), straightPay: usd('6200.00') };
    const { body: made } = await company.owner.post('/v1/opening-wages', body).expect(201);
    expect(made).toEqual({ ...body, year: 2027, createdAt: made.createdAt });
    expect((await company.owner.post('/v1/opening-wages', body)).status).toBe(200);
    const again = await enter({ through: '2027-01-31' });
    expect([again.status, again.body.code]).toEqual([409, 'already-there']);
    expect((await enter({ through: '2026-12-31' })).body.straightPay).toEqual(usd('6500.00'));
    expect((await company.owner.patch(`/v1/opening-wages/${body.id}`, { straightPay: null, allPay: usd('100.00') })).body).toMatchObject({ allPay: usd('100.00'), straightPay: usd('100.00') });
    expect((await company.owner.patch(`/v1/opening-wages/${body.id}`, { allPay: usd('0.00') })).body.straightPay).toEqual(usd('0.00'));
    expect((await company.estimator.get(`/v1/opening-wages?personId=${company.crew.personId}`).expect(200)).body.items).toHaveLength(2);
    expect((await company.estimator.get(`/v1/opening-wages?personId=${company.owner.personId}`)).body.items).toHaveLength(0);
  });

  it.each([
    [{ allPay: { amount: '6500.00', currency: 'EUR' } }, 400, '/allPay/currency'],
    [{ straightPay: usd('6500.01') }, 400, '/straightPay/amount'],
    [{ allPay: usd('-1.00') }, 400, '/allPay/amount'],
    [{ through: '2027-02-30' }, 400, '/through'],
    [{ personId: uuidv7() }, 422, '/personId'],
  ])('refuses %j', async (changes, status, pointer) => {
    const answer = await enter(changes);
    expect([answer.status, answer.body.errors?.[0]?.pointer]).toEqual([status, pointer]);
  });

  it('are nobody\'s but the office\'s to read and the owner\'s to enter', async () => {
    const body = { personId: company.crew.personId, through: '2027-04-30', allPay: usd('1.00') };
    expect([(await company.estimator.post('/v1/opening-wages', body)).status, (await company.crew.get('/v1/opening-wages')).status, (await company.crewLead.get('/v1/opening-wages')).status]).toEqual([403, 403, 403]);
    const other = await makeTestCompany(test);
    const { body: made } = await enter({}).expect(201);
    expect((await other.owner.get(`/v1/opening-wages/${made.id as string}`)).status).toBe(404);
    expect((await other.owner.post('/v1/opening-wages', body)).status).toBe(422);
  });
});
