import { v7 as uuidv7 } from 'uuid';
import { Decimal, sumDecimals } from '../../src/domain/decimal.js';
import { statementsDuring } from '../support/count-statements.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { type Client, makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestJob } from '../support/test-job.js';

const usd = (amount: string) => ({ amount, currency: 'USD' });

interface Share { readonly jobId: string; readonly costCode: string; readonly hours: string; readonly cost: { readonly amount: string } }

describe('work weeks', () => {
  let test: TestApp;
  let company: TestCompany;

  beforeAll(async () => {
    test = await startTestApp();
  });
  beforeEach(async () => {
    company = await makeTestCompany(test);
  });
  afterAll(() => test.close());

  const log = async (jobId: string, person: Client, startedAt: string, endedAt: string, changes: object = {}): Promise<string> =>
    (await company.owner.post('/v1/time-entries', { jobId, personId: person.personId, costCode: 'cleanout', startedAt, endedAt, ...changes }).expect(201)).body.id as string;

  /** Days of ten hours from 2027-05-03, a Monday, in Detroit. */
  const tens = async (person: Client, ...jobs: string[]): Promise<void> => {
    for (const [day, jobId] of jobs.entries()) await log(jobId, person, `2027-05-0${day + 3}T07:00:00-04:00`, `2027-05-0${day + 3}T17:00:00-04:00`);
  };

  const weeks = async (query = 'of=2027-05-05') => (await company.owner.get(`/v1/work-weeks?${query}`).expect(200)).body.items;
  const labor = async (jobId: string): Promise<string> => (await company.owner.get(`/v1/jobs/${jobId}/profitability`).expect(200)).body.costs.labor.amount;
  const flat = async (person: Client, changes: object): Promise<void> => void expect((await company.owner.patch(`/v1/people/${person.personId}`, changes)).status).toBe(200);

  it('pays overtime at half the average rate on top, and shares it over the jobs by the minute', async () => {
    const [first, second] = [await makeTestJob(test, company), await makeTestJob(test, company)];
    await tens(company.crew, first, first, first, second, second);
    const [week] = await weeks();
    // 50 h × 24.00 = 1,200.00; 10 h × 12.00 = 120.00; 22.5 % of 1,320.00 = 297.00. Worked by hand.
    expect(week).toMatchObject({
      personId: company.crew.personId, firstDay: '2027-05-03', lastDay: '2027-05-09', startsAt: '2027-05-03T04:00:00.000Z', endsAt: '2027-05-10T04:00:00.000Z',
      worked: { hours: '50' }, overtime: { hours: '10' }, straightPay: { amount: usd('1200.00') }, regularRate: '24', premium: { amount: usd('120.00') },
      burden: [{ code: null, amount: usd('297.00') }], total: usd('1617.00'),
      byCostCode: [{ jobId: first, costCode: 'cleanout', hours: '30', cost: usd('970.20') }, { jobId: second, costCode: 'cleanout', hours: '20', cost: usd('646.80') }],
    });
    expect(week.premium.working.steps).toEqual([
      { label: 'regular rate', expression: '1200 × 60 / 3000', value: '24', unit: 'USD/h' },
      { label: 'premium', expression: 'round(24 × 600 / 60 / 2)', value: '120', unit: 'USD' },
    ]);
    expect(week.burden[0].working.steps).toEqual([
      { label: 'pay and burden at 22.5 %', expression: '(1200 + 120) × 122.5 / 100', value: '1617', unit: 'USD' },
      { label: 'burden', expression: 'max(0, round(1617) − 1320)', value: '297', unit: 'USD' },
    ]);
    expect([await labor(first), await labor(second)]).toEqual(['970.20', '646.80']);
  });

  it('adds the labor of all jobs up to the payroll of the week, to the cent', async () => {
    const jobs = [await makeTestJob(test, company), await makeTestJob(test, company), await makeTestJob(test, company)];
    await flat(company.crew, { hourlyWage: '21.77', burdenPercent: '19.37' });
    await flat(company.crewLead, { hourlyWage: '31.25', burdenPercent: '23.1' });
    for (const person of [company.crew, company.crewLead]) {
      for (let n = 0; n < 24; n++) {
        const start = Date.UTC(2027, 4, 3 + Math.floor(n / 4), 11 + (n % 4) * 3, 7);
        await log(jobs[n % 3] ?? '', person, new Date(start).toISOString(), new Date(start + (131 + n) * 60_000 + 11_000).toISOString(), { costCode: n % 2 ? 'edge' : 'cleanout' });
      }
    }
    const items = await weeks();
    const sum = (amounts: readonly string[]): string => sumDecimals(amounts.map((amount) => new Decimal(amount))).toFixed(2);
    const payroll = sum(items.map((week: { total: { amount: string } }) => week.total.amount));
    expect(items).toHaveLength(2);
    expect(Number(items[0].overtime.hours)).toBeGreaterThan(0);
    for (const by of ['byCostCode', 'byEntry']) expect(sum(items.flatMap((week: Record<string, Share[]>) => (week[by] ?? []).map((share) => share.cost.amount)))).toBe(payroll);
    expect(sum(await Promise.all(jobs.map(labor)))).toBe(payroll);
  });

  it('stops burden at its yearly cap, in the order of the weeks', async () => {
    const jobId = await makeTestJob(test, company);
    const rate = (body: object) => company.owner.post('/v1/burden-rates', { name: 'Test', base: 'all-pay', effectiveFrom: '2027-01-01', ...body }).expect(201);
    await rate({ code: 'capped', percent: '6', yearlyWageCap: '600.00' });
    await rate({ code: 'endless', percent: '1.45' });
    await rate({ code: 'ended', percent: '50' });
    await rate({ code: 'ended', percent: '0', effectiveFrom: '2027-02-01' });
    const day = (date: string) => log(jobId, company.crew, `${date}T07:00:00-04:00`, `${date}T17:00:00-04:00`);
    // 240.00 each; the last is of another year.
    for (const date of ['2027-05-04', '2027-06-08', '2027-07-06', '2028-05-02']) await day(date);
    const burden = async (of: string) => (await weeks(`of=${of}`))[0].burden.map((one: { code: string; amount: { amount: string } }) => [one.code, one.amount.amount]);
    expect(await burden('2027-05-04')).toEqual([['capped', '14.40'], ['endless', '3.48']]);
    expect(await burden('2027-06-08')).toEqual([['capped', '14.40'], ['endless', '3.48']]);
    expect(await burden('2027-07-06')).toEqual([['capped', '7.20'], ['endless', '3.48']]);
    expect(await burden('2028-05-02')).toEqual([['capped', '14.40'], ['endless', '3.48']]);
    // 4 × 240.00, 50.40 capped and 13.92 without an end.
    expect(await labor(jobId)).toBe('1024.32');
    const [{ burden: [first] }] = await weeks('of=2027-07-06');
    expect(first.working.steps[0].expression).toBe('round(min(240, max(0, 600 − 480)) × 6 / 100)');
  });

  it('cuts a night shift at the beginning of the week, not by its date', async () => {
    const jobId = await makeTestJob(test, company);
    const id = await log(jobId, company.crew, '2027-05-09T22:00:00-04:00', '2027-05-10T06:00:00-04:00');
    const hours = async (of: string) => (await weeks(`of=${of}`)).map((week: { worked: { hours: string }; byEntry: { entryId: string }[] }) => [week.worked.hours, week.byEntry[0]?.entryId]);
    expect([await hours('2027-05-09'), await hours('2027-05-10')]).toEqual([[['2', id]], [['6', id]]]);
    expect(await labor(jobId)).toBe('235.20');
  });

  it('counts the hours really worked when the clocks change', async () => {
    const jobId = await makeTestJob(test, company);
    await log(jobId, company.crew, '2027-03-13T23:00:00-05:00', '2027-03-14T07:30:00-04:00', { unpaidBreakMinutes: 30 });
    const [week] = await weeks('of=2027-03-13');
    expect([week.worked.hours, week.startsAt, week.endsAt]).toEqual(['7', '2027-03-08T05:00:00.000Z', '2027-03-15T04:00:00.000Z']);
  });

  it('counts travel between sites as work (29 CFR 785.38 and 785.41), and pays overtime for it', async () => {
    const jobId = await makeTestJob(test, company);
    for (const day of [3, 4, 5, 6, 7]) {
      await log(jobId, company.crew, `2027-05-0${day}T07:00:00-04:00`, `2027-05-0${day}T15:00:00-04:00`);
      await log(jobId, company.crew, `2027-05-0${day}T15:00:00-04:00`, `2027-05-0${day}T15:40:00-04:00`, { kind: 'travel', costCode: 'travel' });
    }
    const [week] = await weeks();
    expect([week.worked.hours, week.overtime.hours, week.premium.amount]).toEqual(['43.3333', '3.3333', usd('40.00')]);
  });

  it('leaves void, running and held hours out', async () => {
    const jobId = await makeTestJob(test, company);
    const void_ = await log(jobId, company.crew, '2027-05-03T07:00:00-04:00', '2027-05-03T17:00:00-04:00');
    await company.owner.post(`/v1/time-entries/${void_}/void`, { reason: 'Wrong day' }).expect(200);
    const held = await log(jobId, company.crew, '2027-05-04T07:00:00-04:00', '2027-05-04T17:00:00-04:00');
    await test.sql("UPDATE time_entry SET held_because = '{day-locked}' WHERE id = $1", [held]);
    const running = await log(jobId, company.crew, '2027-05-05T07:00:00-04:00', '2027-05-05T17:00:00-04:00');
    await test.sql('UPDATE time_entry SET ended_at = NULL WHERE id = $1', [running]);
    expect([await weeks(), await labor(jobId)]).toEqual([[], '0.00']);
  });

  it('takes an unpaid break from the week that it was in, and none for a short rest', async () => {
    const jobId = await makeTestJob(test, company);
    const breaks = [
      { startedAt: '2027-05-10T00:00:00-04:00', endedAt: '2027-05-10T00:30:00-04:00', paid: false },
      { startedAt: '2027-05-10T03:00:00-04:00', endedAt: '2027-05-10T03:15:00-04:00', paid: false },
    ];
    await log(jobId, company.crew, '2027-05-09T22:00:00-04:00', '2027-05-10T06:00:00-04:00', { breaks });
    expect([(await weeks('of=2027-05-09'))[0].worked.hours, (await weeks('of=2027-05-10'))[0].worked.hours]).toEqual(['2', '5.5']);
  });

  it('follows the policy in force when the week begins, by the day too', async () => {
    const jobId = await makeTestJob(test, company);
    await tens(company.crew, jobId, jobId);
    const policy = { startsOn: 'monday', startsAt: '00:00', weeklyOvertimeHours: '40', dailyOvertimeHours: '8' };
    await company.owner.post('/v1/work-week-policies', { ...policy, effectiveFrom: '2027-05-04' }).expect(201);
    expect((await weeks())[0].overtime.hours).toBe('0');
    await company.owner.post('/v1/work-week-policies', { ...policy, effectiveFrom: '2027-05-03' }).expect(201);
    const [week] = await weeks();
    expect(week).toMatchObject({ overtime: { hours: '4' }, premium: { amount: usd('48.00') } });
    expect(week.overtime.working.steps).toEqual([
      { label: 'over the week\'s threshold', expression: 'max(0, 20 − 40)', value: '0', unit: 'h' },
      { label: 'over the days\' threshold', expression: 'max(0, 10 − 8) + max(0, 10 − 8)', value: '4', unit: 'h' },
      { label: 'overtime', expression: 'max(0, 0, 4)', value: '4', unit: 'h' },
    ]);
  });

  it('shows its working in numbers that somebody can read', async () => {
    const jobId = await makeTestJob(test, company);
    await log(jobId, company.crew, '2027-05-03T08:00:00-04:00', '2027-05-03T16:20:00-04:00');
    const [week] = await weeks();
    expect(week.worked.working.steps[0]).toEqual({ label: 'hours worked', expression: '(500) / 60', value: '8.333333333333', unit: 'h' });
    expect(JSON.stringify(week)).not.toMatch(/\d\.\d{13}/);
  });

  it('keeps the beginning of the workweek once it is set', async () => {
    const body = { id: uuidv7(), startsOn: 'sunday', startsAt: '06:00', weeklyOvertimeHours: '40', effectiveFrom: '2027-01-01' };
    const first = await company.owner.post('/v1/work-week-policies', body).expect(201);
    expect(first.body).toEqual({ ...body, dailyOvertimeHours: null, createdAt: first.body.createdAt });
    expect((await company.owner.post('/v1/work-week-policies', body)).status).toBe(200);
    const moved = await company.owner.post('/v1/work-week-policies', { ...body, id: uuidv7(), startsOn: 'monday' });
    expect([moved.status, moved.body.code, moved.body.errors]).toEqual([409, 'state-conflict', [{ pointer: '/startsOn', detail: 'must stay sunday' }]]);
    expect((await company.owner.patch(`/v1/work-week-policies/${body.id}`, { startsAt: '05:00' })).status).toBe(200);
    await company.owner.post('/v1/work-week-policies', { ...body, id: uuidv7(), startsAt: '05:00', effectiveFrom: '2028-01-01' }).expect(201);
    expect((await company.owner.patch(`/v1/work-week-policies/${body.id}`, { startsAt: '06:00' })).body.errors).toEqual([{ pointer: '/startsAt', detail: 'must stay 05:00' }]);
    expect((await company.owner.get('/v1/work-week-policies')).body.items).toHaveLength(2);
  });

  it('makes, changes and lists burden rates', async () => {
    const body = { id: uuidv7(), code: 'medicare', name: 'Medicare', percent: '1.45', yearlyWageCap: '7000', base: 'straight-pay', effectiveFrom: '2027-01-01' };
    const { body: made } = await company.estimator.post('/v1/burden-rates', body).expect(201);
    expect(made).toEqual({ ...body, yearlyWageCap: '7000.00', createdAt: made.createdAt });
    expect((await company.estimator.patch(`/v1/burden-rates/${body.id}`, { yearlyWageCap: null })).body.yearlyWageCap).toBeNull();
    expect((await company.estimator.get('/v1/burden-rates?code=medicare')).body.items).toHaveLength(1);
    expect((await company.estimator.get('/v1/burden-rates?code=other')).body.items).toHaveLength(0);
    expect((await company.estimator.post('/v1/burden-rates', { ...body, id: uuidv7(), percent: '-1' })).status).toBe(400);
  });

  it('warns of hours of the week that count for nothing as yet', async () => {
    const [jobId, over] = [await makeTestJob(test, company), await makeTestJob(test, company)];
    await tens(company.crew, jobId);
    await tens(company.crewLead, jobId);
    expect((await weeks()).map((week: { warnings: string[] }) => week.warnings)).toEqual([[], []]);
    await company.owner.post(`/v1/jobs/${over}/start`).expect(200);
    await company.owner.post(`/v1/jobs/${over}/finish`).expect(200);
    for (const day of ['2027-05-05', '2027-05-09']) await log(over, company.crew, `${day}T22:00:00-04:00`, `${day === '2027-05-05' ? '2027-05-06' : '2027-05-10'}T02:00:00-04:00`);
    await company.owner.post('/v1/time-entries', { jobId, personId: company.crew.personId, costCode: 'cleanout', startedAt: '2027-05-08T07:00:00-04:00' }).expect(201);
    const ofCrew = (of: string) => weeks(`of=${of}&personId=${company.crew.personId}`);
    expect((await ofCrew('2027-05-05'))[0]).toMatchObject({
      worked: { hours: '10' },
      warnings: ['2 entries of this week are held and count for nothing until the office releases them.', 'Hours that began this week run still and count for nothing until they are stopped.'],
    });
    await log(jobId, company.crew, '2027-05-12T08:00:00-04:00', '2027-05-12T09:00:00-04:00');
    expect((await ofCrew('2027-05-12'))[0]).toMatchObject({ worked: { hours: '1' }, warnings: ['An entry of this week is held and counts for nothing until the office releases it.'] });
    expect((await weeks(`of=2027-05-05&personId=${company.crewLead.personId}`))[0].warnings).toEqual([]);
  });

  it('gives a page of people at a time, with as many statements for many as for one', async () => {
    const jobId = await makeTestJob(test, company);
    await tens(company.crew, jobId);
    const count = () => statementsDuring(test, () => company.owner.get('/v1/work-weeks?of=2027-05-05').expect(200));
    const one = await count();
    await tens(company.crewLead, jobId, jobId);
    await tens(company.estimator, jobId);
    expect((await count()).length).toBe(one.length);
    const people = [];
    for (let cursor: string | null = ''; cursor !== null; ) {
      const { body } = await company.owner.get(`/v1/work-weeks?of=2027-05-05&limit=1${cursor === '' ? '' : `&cursor=${cursor}`}`).expect(200);
      people.push(...body.items.map((week: { personId: string }) => week.personId));
      cursor = body.nextCursor as string | null;
    }
    expect(people).toEqual([company.crew, company.crewLead, company.estimator].map((person) => person.personId).sort().reverse());
    expect((await weeks(`of=2027-05-05&personId=${company.crew.personId}`)).map((week: { personId: string }) => week.personId)).toEqual([company.crew.personId]);
  });

  it('is for the office only', async () => {
    for (const path of ['/v1/work-weeks', '/v1/burden-rates', '/v1/work-week-policies']) {
      expect([(await company.crewLead.get(path)).status, (await company.crew.get(path)).status, (await company.estimator.get(path)).status]).toEqual([403, 403, 200]);
    }
  });
});
