import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestJob } from '../support/test-job.js';

interface Warned {
  readonly warnings: readonly { readonly code: string; readonly detail: string }[];
}

/** Where a day ends: at midnight, when the clocks change, and at a site in another zone than the company's. */
describe('the days of the schedule', () => {
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
  afterEach(() => test.setClock(null));
  afterAll(() => test.close());

  const plan = async (changes: object): Promise<{ id: string; startsAt: string; endsAt: string } & Warned> => {
    const answer = await company.owner.post('/v1/visits', { jobId, startTime: '07:30', lengthMinutes: 60, personIds: [company.crew.personId], ...changes });
    expect([answer.status, answer.text]).toEqual([201, expect.anything()]);
    return answer.body;
  };
  const jobIn = async (timeZone: string): Promise<string> => {
    const id = await makeTestJob(test, company, { title: 'Mend the weir' });
    await test.sql('UPDATE job SET time_zone = $2 WHERE id = $1', [id, timeZone]);
    return id;
  };
  const sheet = async (date: string): Promise<[string, string, string][]> =>
    ((await company.crew.get(`/v1/day?date=${date}`)).body.jobs as { visits: { id: string; day: string; startTime: string }[] }[]).flatMap(({ visits }) => visits.map(({ id, day, startTime }): [string, string, string] => [id, day, startTime]));
  const board = async (week: string): Promise<string[]> => ((await company.owner.get(`/v1/board?week=${week}`)).body.visits as { id: string }[]).map(({ id }) => id);
  const codes = ({ warnings }: Warned): string[] => warnings.map(({ code }) => code);

  it('have a visit over midnight on the sheets of both, and on the board where it starts', async () => {
    // Sunday night.
    const { id } = await plan({ day: '2027-05-16', startTime: '22:00', lengthMinutes: 480 });
    expect([await sheet('2027-05-15'), await sheet('2027-05-16'), await sheet('2027-05-17'), await sheet('2027-05-18')]).toEqual([[], [[id, '2027-05-16', '22:00']], [[id, '2027-05-16', '22:00']], []]);
    expect([await board('2027-W19'), await board('2027-W20')]).toEqual([[id], []]);
  });

  it('begin at midnight: a visit that ends then is of the day before alone, one that starts then of the day after', async () => {
    const evening = await plan({ day: '2027-05-16', startTime: '22:00', lengthMinutes: 120 });
    const morning = await plan({ day: '2027-05-17', startTime: '00:00', lengthMinutes: 1440 });
    expect([await sheet('2027-05-16'), await sheet('2027-05-17'), await sheet('2027-05-18')]).toEqual([[[evening.id, '2027-05-16', '22:00']], [[morning.id, '2027-05-17', '00:00']], []]);
    expect([evening.warnings, morning.warnings]).toEqual([[], []]);
    expect([await board('2027-W19'), await board('2027-W20')]).toEqual([[evening.id], [morning.id]]);
  });

  it('have 23 and 25 hours when the clocks change, and a visit takes what really passes', async () => {
    // 14 March 2027 in Detroit: 24 hours from midnight reach to 01:00 of the day after. 7 November: to 23:00 of the same day.
    const spring = await plan({ day: '2027-03-14', startTime: '00:00', lengthMinutes: 1440 });
    const autumn = await plan({ day: '2027-11-07', startTime: '00:00', lengthMinutes: 1440 });
    expect([spring.startsAt, spring.endsAt, autumn.startsAt, autumn.endsAt]).toEqual(['2027-03-14T05:00:00.000Z', '2027-03-15T05:00:00.000Z', '2027-11-07T04:00:00.000Z', '2027-11-08T04:00:00.000Z']);
    expect((await sheet('2027-03-15')).map(([id]) => id)).toEqual([spring.id]);
    expect((await sheet('2027-11-08')).map(([id]) => id)).toEqual([]);
    // 01:00 of the 15th is when the long visit ends; half an hour before it does not.
    expect(codes(await plan({ day: '2027-03-15', startTime: '01:00' }))).toEqual([]);
    expect(codes(await plan({ day: '2027-03-15', startTime: '00:30', lengthMinutes: 15 }))).toEqual(['double-booked']);
  });

  it('are those of each site: the same instant is Sunday at one and Monday at another', async () => {
    const auckland = await jobIn('Pacific/Auckland');
    // 16 May, 21:00 in Detroit is 17 May, 13:00 in Auckland.
    const here = await plan({ day: '2027-05-16', startTime: '21:00' });
    const there = await plan({ jobId: auckland, day: '2027-05-17', startTime: '13:00', personIds: [company.crewLead.personId] });
    expect(there.startsAt).toBe(here.startsAt);
    expect([await board('2027-W19'), await board('2027-W20')]).toEqual([[here.id], [there.id]]);
  });

  it('of somebody off are days at the site, in whatever zone it is', async () => {
    const honolulu = await jobIn('Pacific/Honolulu');
    await company.crew.post('/v1/days-off', { personId: company.crew.personId, firstDay: '2027-05-12' });
    // 20:00 of the 11th in Honolulu is 02:00 of the 12th in Detroit; at the site the day off has not come.
    expect(codes(await plan({ jobId: honolulu, day: '2027-05-11', startTime: '20:00' }))).toEqual([]);
    // It comes at midnight there, and lasts until the 13th in Detroit has its breakfast.
    expect(codes(await plan({ jobId: honolulu, day: '2027-05-11', startTime: '23:30' }))).toEqual(['day-off']);
    expect(codes(await plan({ jobId: honolulu, day: '2027-05-12', startTime: '23:00', lengthMinutes: 30 }))).toEqual(['day-off']);
    expect(codes(await plan({ jobId: honolulu, day: '2027-05-13', startTime: '00:00' }))).toEqual([]);
  });

  it('count for a locate that lapses at midnight, within a night\'s work', async () => {
    await company.owner.post('/v1/blockers', { jobId, kind: 'utility-locate', requestedOn: '2027-05-01', clearedOn: '2027-05-04', validUntil: '2027-05-16' });
    expect(codes(await plan({ day: '2027-05-16', startTime: '22:00', lengthMinutes: 120 }))).toEqual([]);
    const [warning] = (await plan({ day: '2027-05-16', startTime: '22:00', lengthMinutes: 121, personIds: [company.crewLead.personId] })).warnings;
    expect(warning?.detail).toMatch(/^The utility locate holds only through 2027-05-16: ask for it anew\. Call before you dig\./);
    // Whoever leaves in the evening reads the sheet of that day, and not the one of the day after.
    const blockers = async (date: string) => (await company.crewLead.get(`/v1/day?date=${date}`)).body.jobs[0].blockers;
    expect([await blockers('2027-05-16'), await blockers('2027-05-17')]).toEqual([[warning?.detail], [warning?.detail]]);
    expect(codes(await plan({ day: '2027-05-03', startTime: '23:00', lengthMinutes: 180 }))).toEqual(['blocked']);
  });

  it.each([['materials', { requestedOn: '2027-05-01', clearOn: '2027-05-20' }, /^The delivery of materials is expected on 2027-05-20/], ['permit', {}, /^The permit has not been asked for yet\.$/], ['other', { requestedOn: '2027-05-01' }, /^What must come before was asked for on 2027-05-01, and nobody has said until when\.$/],
    // Else nobody could tell two permits apart, or know what the other thing is.
    ['permit', { reference: 'P-118', note: 'For the outfall.' }, /^The permit \(P-118\) has not been asked for yet\.$/], ['other', { note: 'The neighbour moves the boat.\nAsk again on Monday.' }, /^What must come before \(The neighbour moves the boat\) has/], ['other', { note: 'Long '.repeat(60) }, /^What must come before \((Long ){15}Long…\) has/]])(
    'are told for what a visit waits for: %s',
    async (kind, dates, detail) => {
      await company.owner.post('/v1/blockers', { jobId, kind, ...dates });
      const { warnings } = await plan({ day: '2027-05-16' });
      expect(warnings.map((warning) => warning.detail)).toEqual([expect.stringMatching(detail)]);
      const { body } = await company.crew.get('/v1/day?date=2027-05-16');
      expect(body.jobs[0].blockers).toEqual(warnings.map((warning) => warning.detail));
    },
  );

  it.each(['0001-W01', '9999-W52', '2200-W54', '1899-W52', '2027-W1', '2027-W19&week=2027-W20', '%00', '2027-W\u0661\u0669'])('take no week like %s', async (week) => {
    const answer = await company.crew.get(`/v1/board?week=${week}`);
    expect([answer.status, answer.body.code]).toEqual([400, 'invalid-input']);
  });

  it('reach from the first to the last that the service knows', async () => {
    for (const date of ['1900-01-01', '2200-12-31']) {
      const { id } = await plan({ day: date, startTime: '23:30', lengthMinutes: 1440 });
      expect((await sheet(date)).map(([first]) => first)).toEqual([id]);
    }
    for (const week of ['1900-W01', '2200-W52']) expect((await company.crew.get(`/v1/board?week=${week}`)).status).toBe(200);
    for (const date of ['0001-01-01', '9999-12-31', '2027-05-16T00:00:00Z', '%00', '']) expect((await company.crew.get(`/v1/day?date=${date}`)).status).toBe(400);
  });

  it('leave out of a job\'s crew who does not work here any more', async () => {
    await plan({ day: '2027-05-16', personIds: [company.crew.personId, company.crewLead.personId] });
    await company.owner.patch(`/v1/people/${company.crewLead.personId}`, { active: false });
    const { body } = await company.crew.get('/v1/day?date=2027-05-16');
    expect(body.jobs[0].crew.map(({ id }: { id: string }) => id)).toEqual([company.crew.personId]);
  });
});
