import fc from 'fast-check';
import { Decimal, sumDecimals } from '../../src/domain/decimal.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestJob } from '../support/test-job.js';

const HOUR = 3_600_000;
const DAY = 24 * HOUR;

interface Share { readonly jobId: string; readonly cost: { readonly amount: string }; readonly hours: string }
interface Week { readonly total: { readonly amount: string }; readonly overtime: { readonly hours: string }; readonly byCostCode: Share[]; readonly byEntry: Share[] }

/** Hours of a person one after another, by day and by night, with meals and rests. */
const anyShift = fc.record({
  gap: fc.integer({ min: 0, max: 12 * HOUR }),
  length: fc.integer({ min: 20_000, max: 11 * HOUR }),
  unpaid: fc.double({ min: 0, max: 0.3, noNaN: true }),
  pause: fc.option(fc.record({ at: fc.double({ min: 0.1, max: 0.5, noNaN: true }), of: fc.double({ min: 0.01, max: 0.2, noNaN: true }), paid: fc.boolean() })),
  job: fc.nat({ max: 2 }),
  costCode: fc.constantFrom('cleanout', 'edge'),
});

/** Two ways lead to the same cents: a week's list cuts entries by the day, a job's labor is summed by the database. */
describe('work weeks of random hours', () => {
  let test: TestApp;

  beforeAll(async () => {
    test = await startTestApp();
  });
  afterAll(() => test.close());

  const CASES = [
    // Clocks go forward, back, and by half an hour; the last one spans the end of the year, where caps start anew.
    ['America/Detroit', '2027-03-04', { startsOn: 'monday', startsAt: '00:00' }, null, 11],
    ['Europe/Berlin', '2027-10-21', { startsOn: 'wednesday', startsAt: '06:00' }, '8', 12],
    ['Australia/Lord_Howe', '2027-03-25', { startsOn: 'sunday', startsAt: '02:15' }, null, 13],
    ['Pacific/Apia', '2027-12-20', { startsOn: 'friday', startsAt: '23:45' }, '7.5', 14],
  ] as const;

  it.each(CASES)('in %s from %s: what jobs carry is the payroll, to the cent', async (timeZone, from, anchor, dailyOvertimeHours, seed) => {
    const company = await makeTestCompany(test, { timeZone });
    const { owner } = company;
    const jobs = [await makeTestJob(test, company), await makeTestJob(test, company), await makeTestJob(test, company)];
    await owner.post('/v1/work-week-policies', { ...anchor, weeklyOvertimeHours: '40', dailyOvertimeHours, effectiveFrom: '2027-01-01' }).expect(201);
    for (const [code, percent, yearlyWageCap, base] of [['a', '6.2', '2500', 'all-pay'], ['b', '1.45', null, 'all-pay'], ['c', '7.77', '900', 'straight-pay']]) {
      await owner.post('/v1/burden-rates', { code, name: code, percent, yearlyWageCap, base, effectiveFrom: '2027-01-01' }).expect(201);
    }
    const through = new Date(Date.parse(from) + 10 * DAY).toISOString().slice(0, 10);
    await owner.post('/v1/opening-wages', { personId: company.crew.personId, through, allPay: { amount: '1900.01', currency: 'USD' }, straightPay: { amount: '777.77', currency: 'USD' } }).expect(201);
    await work(company, jobs, from, seed);

    const weeks: Week[] = [];
    for (let day = -7; day <= 35; day += 7) {
      const of = new Date(Date.parse(from) + day * DAY).toISOString().slice(0, 10);
      weeks.push(...(await owner.get(`/v1/work-weeks?of=${of}&limit=200`).expect(200)).body.items);
    }
    const sum = (shares: readonly Share[], of: (share: Share) => string = (share) => share.cost.amount): string => sumDecimals(shares.map((share) => new Decimal(of(share)))).toFixed(2);
    const payroll = sumDecimals(weeks.map((week) => new Decimal(week.total.amount))).toFixed(2);
    expect(weeks.some((week) => Number(week.overtime.hours) > 0)).toBe(true);
    expect([sum(weeks.flatMap((week) => week.byCostCode)), sum(weeks.flatMap((week) => week.byEntry))]).toEqual([payroll, payroll]);
    for (const jobId of jobs) {
      const { body } = await owner.get(`/v1/jobs/${jobId}/profitability`).expect(200);
      const carried = weeks.flatMap((week) => week.byCostCode).filter((share) => share.jobId === jobId);
      expect(body.costs.labor.amount).toBe(sum(carried));
      expect(Math.abs(Number(body.hours.actual) - Number(sum(carried, (share) => share.hours)))).toBeLessThan(0.02);
    }
  });

  /** At two wages each; some hours are void, some held, and the last ones still run. */
  async function work({ owner, crew, crewLead, estimator }: TestCompany, jobs: readonly string[], from: string, seed: number): Promise<void> {
    for (const [index, { personId }] of [crew, crewLead, estimator].entries()) {
      let clock = Date.parse(from);
      for (const [wave, hourlyWage] of ['23.17', '31.255'].entries()) {
        expect((await owner.patch(`/v1/people/${personId}`, { hourlyWage })).status).toBe(200);
        const [shifts = []] = fc.sample(fc.array(anyShift, { minLength: 22, maxLength: 22 }), { seed: seed * 100 + index * 10 + wave, numRuns: 1 });
        const items = shifts.map(({ gap, length, unpaid, pause, job, costCode }) => {
          const startedAt = clock + gap;
          clock = startedAt + length;
          const at = (part: number): string => new Date(startedAt + Math.floor(length * part)).toISOString();
          const breaks = pause === null ? [] : [{ startedAt: at(pause.at), endedAt: at(pause.at + pause.of), paid: pause.paid }];
          return { jobId: jobs[job], personId, costCode, startedAt: at(0), endedAt: at(1), unpaidBreakMinutes: Math.floor((unpaid * length) / 60_000), breaks };
        });
        const { body } = await owner.post('/v1/time-entries/batch', { items }).expect(200);
        expect(body.items.map((item: { outcome: string }) => item.outcome)).toEqual(items.map(() => 'made'));
      }
      const mine = (n: number): string => `id IN (SELECT id FROM time_entry WHERE person_id = '${personId}' ORDER BY started_at OFFSET ${n} LIMIT 1)`;
      await test.sql(`UPDATE time_entry SET voided_at = now(), void_reason = 'Twice' WHERE ${mine(5)}`);
      await test.sql(`UPDATE time_entry SET held_because = '{day-locked}' WHERE ${mine(9)}`);
      await test.sql(`UPDATE time_entry SET ended_at = NULL WHERE ${mine(43)}`);
    }
  }
});
