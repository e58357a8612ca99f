import { v7 as uuidv7 } from 'uuid';
import { LogManyHours, type HoursToLog } from '../../src/features/time-entries/index.js';
import { statementsDuring } from '../support/count-statements.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { actorOf, makeTestJob } from '../support/test-job.js';

describe('many hours at once', () => {
  let test: TestApp;
  let company: TestCompany;
  let jobId: string;
  let many: LogManyHours;

  beforeAll(async () => {
    test = await startTestApp();
    many = test.app.get(LogManyHours, { strict: false });
  });
  beforeEach(async () => {
    company = await makeTestCompany(test);
    jobId = await makeTestJob(test, company);
  });
  afterAll(() => test.close());

  const receipt = { recordedAt: null, receivedAt: new Date('2027-06-01T12:00:00Z'), clockSkewSeconds: null };
  /** The n-th hour of a long row of hours that only touch. */
  const hour = (n: number, changes: object = {}): HoursToLog => ({
    receipt,
    body: { id: uuidv7(), jobId, personId: company.crew.personId, costCode: 'cleanout', startedAt: at(n), endedAt: at(n + 1), ...changes },
  });
  const at = (n: number): string => new Date(Date.UTC(2027, 4, 3, n)).toISOString();
  const said = (outcomes: Awaited<ReturnType<LogManyHours['execute']>>) => outcomes.map((outcome) => (outcome instanceof Error ? (outcome as { code?: string }).code ?? outcome.name : outcome.created));
  const log = async (...hours: HoursToLog[]) => said(await many.execute(actorOf(company), hours));

  it('answers each item on its own, and a bad one touches no other', async () => {
    const first = hour(0);
    await log(first);
    const gone = await company.owner.post('/v1/people', { name: 'Tam Weller', email: `${uuidv7()}@fernhollow.example`, role: 'crew', hourlyWage: '21.00', burdenPercent: '20', active: false });
    const twice = hour(8);
    expect(await log(
      first, { ...first, body: { ...first.body, note: 'Other' } }, hour(0, { startedAt: '2027-05-03T00:30:00Z' }), hour(1),
      hour(2, { costCode: 'planting' }), hour(3, { jobId: uuidv7() }), hour(4, { personId: uuidv7() }), hour(5, { personId: gone.body.id }),
      hour(6, { endedAt: at(5) }), hour(7), twice, twice, hour(8, { note: 'Overlaps within the batch' }), hour(0, { personId: company.crewLead.personId }),
    )).toEqual([
      false, 'id-taken', 'time-overlap', true,
      'not-possible', 'no-such-reference', 'no-such-reference', true,
      'DomainError', true, true, false, 'time-overlap', true,
    ]);
  });

  it('names the entry that is in the way, so that a phone that does not have it can say which', async () => {
    const [there, running] = [hour(2), hour(5, { endedAt: null })];
    await log(there, running);
    const refused = await many.execute(actorOf(company), [hour(2, { startedAt: '2027-05-03T02:30:00Z', endedAt: '2027-05-03T04:00:00Z' }), hour(2, { endedAt: null }), hour(9, { endedAt: null })]);
    const said = refused.map((outcome) => (outcome as { errors?: { detail: string }[] }).errors?.[0]?.detail);
    expect(said).toEqual([
      `overlaps another entry of the same person: ${there.body.id}, from 2027-05-03T02:00:00.000Z to 2027-05-03T03:00:00.000Z`,
      expect.stringContaining('of the same person'),
      `another entry of the same person runs: ${running.body.id}, from 2027-05-03T05:00:00.000Z`,
    ]);
  });

  it('lets crew log for themselves alone', async () => {
    const actor = { ...actorOf(company), role: 'crew', personId: company.crew.personId } as const;
    expect(said(await many.execute(actor, [hour(0), hour(0, { personId: company.crewLead.personId })]))).toEqual([true, 'not-allowed']);
  });

  it('starts each job on the day of the earliest hour that was taken, not of one that was refused', async () => {
    const other = await makeTestJob(test, company);
    const late = await makeTestJob(test, company);
    await log(hour(24));
    await log(hour(72), hour(0, { jobId: other, startedAt: at(24), endedAt: at(25) }), hour(48, { jobId: late }), hour(30, { jobId: late }));
    const started = async (id: string) => [(await company.crew.get(`/v1/jobs/${id}`)).body.state, (await company.crew.get(`/v1/jobs/${id}`)).body.startedOn];
    expect(await started(jobId)).toEqual(['under-way', '2027-05-03']);
    expect(await started(other)).toEqual(['planned', null]);
    expect(await started(late)).toEqual(['under-way', '2027-05-04']);
  });

  it('still answers repeated hours when the job was finished in the meantime, and holds new ones', async () => {
    const [first, late, elsewhere] = [hour(0), hour(1), hour(2, { jobId: await makeTestJob(test, company) })];
    await log(first);
    await company.owner.post(`/v1/jobs/${jobId}/finish`);
    expect(await log(first, late, elsewhere)).toEqual([false, true, true]);
    const held = await Promise.all([first, late, elsewhere].map(async ({ body }) => (await company.owner.get(`/v1/time-entries/${body.id}`)).body.heldBecause));
    expect(held).toEqual([[], ['job-finished'], []]);
    expect((await company.owner.get(`/v1/jobs/${jobId}`)).body.state).toBe('finished');
  });

  it('takes as many statements for 200 hours as for one', async () => {
    const count = async (hours: HoursToLog[]) => (await statementsDuring(test, () => many.execute(actorOf(company), hours))).length;
    const few = await count([hour(0)]);
    expect(await count(Array.from({ length: 200 }, (_, n) => hour(n + 1)))).toBeLessThanOrEqual(few);
    expect(few).toBeLessThanOrEqual(12);
  });

  it('keeps hours once of two batches that come at the same moment', async () => {
    const batch = Array.from({ length: 20 }, (_, n) => hour(n));
    const answers = await Promise.all([log(...batch), log(...batch.toReversed()), log(...batch)]);
    expect(answers.flat().filter((created) => created === true)).toHaveLength(20);
    expect(answers.flat().filter((created) => created === false)).toHaveLength(40);
  });
});
