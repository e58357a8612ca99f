import fc from 'fast-check';
import { parseWeek, weekOf } from '../../src/features/schedule/board/iso-week.js';
import { statementsDuring } from '../support/count-statements.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestJob } from '../support/test-job.js';

describe('the board', () => {
  let test: TestApp;
  let company: TestCompany;

  beforeAll(async () => {
    test = await startTestApp();
  });
  beforeEach(async () => {
    company = await makeTestCompany(test);
  });
  afterEach(() => test.setClock(null));
  afterAll(() => test.close());

  /** A job with a visit, a blocker and a person with a day off, in the week from 10 to 16 May 2027. */
  const fill = async (day = '2027-05-11'): Promise<{ jobId: string; visitId: string }> => {
    const jobId = await makeTestJob(test, company);
    const { personId } = company.crew;
    await company.owner.post('/v1/blockers', { jobId, kind: 'permit', clearOn: '2027-05-20' });
    await company.owner.post('/v1/days-off', { personId, firstDay: '2027-05-16', lastDay: '2027-05-18' });
    const { body } = await company.owner.post('/v1/visits', { jobId, day, startTime: '07:30', lengthMinutes: 60, personIds: [personId] });
    return { jobId, visitId: body.id };
  };

  it('shows a week in one request: people, jobs, visits with warnings, days off, blockers', async () => {
    const { jobId, visitId } = await fill();
    const sunday = await fill('2027-05-16');
    await fill('2027-05-17');
    const board = await company.owner.get('/v1/board?week=2027-W19');
    expect(board.body).toMatchObject({ week: '2027-W19', firstDay: '2027-05-10', lastDay: '2027-05-16', cut: false });
    expect(board.body.people.map(({ name }: { name: string }) => name)).toEqual(['Test crew', 'Test crew-lead', 'Test estimator', 'Test owner']);
    expect(board.body.jobs.map(({ id, address }: { id: string; address: string | null }) => [id, address])).toEqual([[jobId, null], [sunday.jobId, null]]);
    const visits = board.body.visits as { id: string; warnings: { code: string }[] }[];
    expect(visits.map(({ id, warnings }) => [id, warnings.map(({ code }) => code)])).toEqual([[visitId, ['blocked']], [sunday.visitId, ['blocked', 'day-off', 'day-off', 'day-off']]]);
    expect([board.body.daysOff.length, board.body.blockers.length]).toEqual([3, 2]);
  });

  it('shows crew the visits, and days off of their own alone', async () => {
    await fill();
    await company.owner.post('/v1/days-off', { personId: company.crewLead.personId, firstDay: '2027-05-12', note: 'Dentist' });
    const board = await company.crew.get('/v1/board?week=2027-W19');
    expect(board.body.visits).toHaveLength(1);
    expect(board.body.daysOff.map(({ personId }: { personId: string }) => personId)).toEqual([company.crew.personId]);
    expect(board.text).not.toContain('Dentist');
  });

  it('answers 304 while nothing changed, and anew when a blocker was cleared', async () => {
    await fill();
    const path = '/v1/board?week=2027-W19';
    const first = await company.owner.get(path);
    const etag = first.headers['etag'] ?? '';
    expect((await company.owner.get(path).set('if-none-match', etag)).status).toBe(304);
    await company.owner.patch(`/v1/blockers/${first.body.blockers[0].id}`, { clearedOn: '2027-05-10' });
    const second = await company.owner.get(path).set('if-none-match', etag);
    expect([second.status, second.body.visits[0].warnings]).toEqual([200, []]);
  });

  it('is that of the present week in the company\'s zone unless told', async () => {
    // A Sunday evening in Detroit, when it is Monday in UTC already. The people sign in at that time.
    test.setClock('2026-05-11T02:00:00Z');
    const earlier = await makeTestCompany(test);
    expect((await earlier.owner.get('/v1/board')).body).toMatchObject({ week: '2026-W19', firstDay: '2026-05-04', lastDay: '2026-05-10' });
  });

  it('takes as many statements for many visits as for one', async () => {
    const count = async (): Promise<number> => {
      await company.owner.get('/v1/board?week=2027-W19');
      return (await statementsDuring(test, async () => void (await company.owner.get('/v1/board?week=2027-W19')))).length;
    };
    await fill();
    const one = await count();
    expect(one).toBe(6);
    for (let i = 0; i < 8; i++) await fill();
    expect(await count()).toBe(one);
  });

  it.each(['2027-W53', '2027-W00', '2027-19', '2027W19', 'soon', '1899-W10', ''])('refuses the week %j', async (week) => {
    const answer = await company.owner.get(`/v1/board?week=${week}`);
    expect([answer.status, answer.body.errors?.[0]?.pointer]).toEqual([400, '/week']);
  });
});

describe('a week', () => {
  // Days on the borders of years, from the definition: a week belongs to the year that its Thursday is in.
  it.each([['2027-01-03', '2026-W53'], ['2027-01-04', '2027-W01'], ['2024-12-30', '2025-W01'], ['2026-12-31', '2026-W53'], ['2021-01-01', '2020-W53']])('counts %s to %s', (day, week) => {
    expect(weekOf(day).week).toBe(week);
  });

  it('names the week of every day so that the name leads back to it', () => {
    const days = fc.date({ min: new Date('1901-01-01'), max: new Date('2199-12-31'), noInvalidDate: true }).map((date) => date.toISOString().slice(0, 10));
    fc.assert(
      fc.property(days, (day) => {
        const week = weekOf(day);
        expect(parseWeek(week.week)).toEqual(week);
        expect(week.firstDay <= day && day <= week.lastDay).toBe(true);
      }),
    );
  });
});
