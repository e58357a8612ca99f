import { v7 as uuidv7 } from 'uuid';
import { addDays } from '../../src/platform/clock/clock.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { type Client, makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestJob } from '../support/test-job.js';

describe('running hours, breaks and travel', () => {
  let test: TestApp;
  let company: TestCompany;
  let jobId: string;
  let day = 0;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    jobId = await makeTestJob(test, company);
  });
  beforeEach(() => {
    day += 3;
  });
  afterAll(() => test.close());

  const at = (time: string): string => `${addDays('2027-05-01', day)}T${time}:00.000Z`;
  const start = (person: Client, changes: object = {}) => ({ id: uuidv7(), jobId, personId: person.personId, costCode: 'cleanout', startedAt: at('11:30'), ...changes });
  const problem = (answer: { status: number; body: { code: string; errors: { pointer: string }[] } }) => [answer.status, answer.body.code, answer.body.errors[0]?.pointer];
  const laborHours = async () => (await company.owner.get(`/v1/jobs/${jobId}/profitability`)).body.hours.actual as string;

  it('run from now, count for nothing until they are stopped, and are stopped once', async () => {
    const before = await laborHours();
    const made = await company.crew.post('/v1/time-entries', start(company.crew));
    expect([made.status, made.body.endedAt, made.body.paidMinutes]).toEqual([201, null, null]);
    expect((await company.owner.get(`/v1/time-entries/${made.body.id}`)).body.laborCost).toBeUndefined();
    expect(await laborHours()).toBe(before);
    const path = `/v1/time-entries/${made.body.id}/stop`;
    const stopped = await company.crew.post(path, { endedAt: at('15:30'), unpaidBreakMinutes: 30 });
    expect([stopped.status, stopped.body.paidMinutes, stopped.headers['etag']]).toEqual([200, '210', '"2"']);
    expect(Number(await laborHours())).toBe(Number(before) + 3.5);
    const again = [await company.crew.post(path, { endedAt: at('15:30') }), await company.crew.post(path)];
    expect(again.map(({ body }) => body)).toEqual([stopped.body, stopped.body]);
    expect(problem(await company.crew.post(path, { endedAt: at('15:31') }))).toEqual([409, 'state-conflict', '/endedAt']);
  });

  it('run once a person, and not from within other hours', async () => {
    const { body } = await company.crew.post('/v1/time-entries', start(company.crew));
    expect(problem(await company.crew.post('/v1/time-entries', start(company.crew, { startedAt: at('12:00') })))).toEqual([409, 'time-overlap', '/startedAt']);
    await company.crew.post(`/v1/time-entries/${body.id}/stop`, { endedAt: at('13:00') });
    expect(problem(await company.crew.post('/v1/time-entries', start(company.crew, { startedAt: at('12:59') })))).toEqual([409, 'time-overlap', '/startedAt']);
    const next = await company.crew.post('/v1/time-entries', start(company.crew, { startedAt: at('13:00') }));
    expect(next.status).toBe(201);
    await company.crew.post(`/v1/time-entries/${next.body.id}/stop`, { endedAt: at('14:00') });
  });

  it('are not handed by a correction to somebody who runs others', async () => {
    const [mine, theirs] = [await company.crew.post('/v1/time-entries', start(company.crew)), await company.crewLead.post('/v1/time-entries', start(company.crewLead))];
    const handed = await company.owner.patch(`/v1/time-entries/${mine.body.id}`, { personId: company.crewLead.personId }, '"1"');
    expect(problem(handed)).toEqual([409, 'time-overlap', '/personId']);
    for (const { body } of [mine, theirs]) expect((await company.owner.post(`/v1/time-entries/${body.id}/void`, { reason: 'Forgotten' })).status).toBe(200);
  });

  it('lets two phones that start at the same moment start once', async () => {
    const answers = await Promise.all([company.crewLead, company.owner, company.estimator].map((phone) => phone.post('/v1/time-entries', start(company.crewLead))));
    expect(answers.map(({ status }) => status).sort()).toEqual([201, 409, 409]);
    const there = answers.find(({ status }) => status === 201);
    await company.owner.post(`/v1/time-entries/${there?.body.id}/stop`, { endedAt: at('12:00') });
  });

  it('keep nobody from logging the next day when they were forgotten, and then end before it', async () => {
    const forgotten = await company.crew.post('/v1/time-entries', start(company.crew));
    const nextDay = { startedAt: at('11:30').replace(at('00:00').slice(0, 10), addDays(at('00:00').slice(0, 10), 1)), endedAt: at('15:30').replace(at('00:00').slice(0, 10), addDays(at('00:00').slice(0, 10), 1)) };
    expect((await company.crew.post('/v1/time-entries', start(company.crew, nextDay))).status).toBe(201);
    const path = `/v1/time-entries/${forgotten.body.id}/stop`;
    expect(problem(await company.crew.post(path, { endedAt: nextDay.endedAt }))).toEqual([400, 'invalid-input', '/endedAt']);
    const overlapping = nextDay.startedAt.replace('11:30', '11:29');
    expect((await company.crew.post(path, { endedAt: overlapping })).status).toBe(200);
  });

  it('refuse a stop within which other hours of the person lie, and name them', async () => {
    const running = await company.crew.post('/v1/time-entries', start(company.crew));
    const within = await company.crew.post('/v1/time-entries', start(company.crew, { startedAt: at('13:00'), endedAt: at('14:00') }));
    const path = `/v1/time-entries/${running.body.id}/stop`;
    const refused = await company.crew.post(path, { endedAt: at('13:01') });
    expect(problem(refused)).toEqual([409, 'time-overlap', '/endedAt']);
    expect(refused.body.errors[0].detail).toContain(`${within.body.id}, from ${at('13:00')} to ${at('14:00')}`);
    expect((await company.crew.post(path, { endedAt: at('13:00') })).status).toBe(200);
  });

  it('are stopped also when their job was finished in the meantime, and never run again', async () => {
    const job = await makeTestJob(test, company);
    const { body } = await company.crew.post('/v1/time-entries', start(company.crew, { jobId: job }));
    await company.owner.post(`/v1/jobs/${job}/finish`);
    const stopped = await company.crew.post(`/v1/time-entries/${body.id}/stop`, { endedAt: at('12:30') });
    expect([stopped.status, stopped.body.paidMinutes]).toEqual([200, '60']);
    await company.owner.post(`/v1/jobs/${job}/reopen`);
    expect(problem(await company.crew.patch(`/v1/time-entries/${body.id}`, { endedAt: null }, '"2"'))).toEqual([400, 'invalid-input', '/endedAt']);
  });

  it('hide from crew what others run', async () => {
    const { body } = await company.crewLead.post('/v1/time-entries', start(company.crewLead));
    expect((await company.crew.post(`/v1/time-entries/${body.id}/stop`, { endedAt: at('12:30') })).status).toBe(404);
    expect((await company.crewLead.post(`/v1/time-entries/${body.id}/stop`, { endedAt: at('12:30') })).status).toBe(200);
  });

  it('take a meal off and pay a rest, and count an unpaid rest under 20 minutes as work, with a warning', async () => {
    const breaks = [
      { startedAt: at('13:00'), endedAt: at('13:15'), paid: true },
      { startedAt: at('14:00'), endedAt: at('14:30'), paid: false },
      { startedAt: at('15:00'), endedAt: at('15:19'), paid: false },
    ];
    const { body } = await company.crew.post('/v1/time-entries', start(company.crew, { endedAt: at('16:30'), breaks }));
    expect([body.paidMinutes, body.breaks]).toEqual(['270', breaks]);
    expect(body.warnings).toEqual(['An unpaid rest is under 20 minutes and counted as work (29 CFR 785.18).']);
    expect((await company.owner.get(`/v1/time-entries/${body.id}`)).body.laborCost.amount).toBe('132.30');
  });

  it.each([
    ['a break before the work', [['11:29', '12:00']], '/breaks/0/startedAt'],
    ['a break after the work', [['13:00', '15:31']], '/breaks/0/endedAt'],
    ['a break that ends before it starts', [['13:00', '12:30']], '/breaks/0/endedAt'],
    ['breaks that overlap', [['12:00', '12:30'], ['12:29', '13:00']], '/breaks/1/startedAt'],
    ['breaks that are longer than the work together', [['11:30', '15:30']], '/unpaidBreakMinutes'],
  ])('refuse %s', async (_, times, pointer) => {
    const breaks = times.map(([from = '', to = '']) => ({ startedAt: at(from), endedAt: at(to), paid: false }));
    const answer = await company.crew.post('/v1/time-entries', start(company.crew, { endedAt: at('15:30'), breaks, unpaidBreakMinutes: 1 }));
    expect(problem(answer)).toEqual([400, 'invalid-input', pointer]);
  });

  it('may be travel', async () => {
    const made = await company.crew.post('/v1/time-entries', start(company.crew, { kind: 'travel', costCode: 'travel', endedAt: at('12:00') }));
    expect(made.body.kind).toBe('travel');
    expect(problem(await company.crew.post('/v1/time-entries', start(company.crew, { kind: 'idle', endedAt: at('12:00') })))).toEqual([400, 'invalid-input', '/kind']);
  });

  it('keep when the device took them down and how far its clock is off, warn past two minutes, and may be repeated at another time', async () => {
    const in_ = (seconds: number): string => new Date(Date.now() + seconds * 1_000).toISOString();
    const body = start(company.crew, { endedAt: at('12:00'), recordedAt: at('12:01') });
    const made = await company.crew.post('/v1/time-entries', { ...body, sentAt: in_(60) });
    expect(made.body).toMatchObject({ recordedAt: at('12:01'), warnings: [] });
    expect(Math.abs(Number(made.body.clockSkewSeconds) - 60)).toBeLessThan(30);
    const again = await company.crew.post('/v1/time-entries', { ...body, sentAt: in_(600) });
    expect([again.status, again.body]).toEqual([200, made.body]);
    const slow = await company.crew.post('/v1/time-entries', start(company.crew, { startedAt: at('12:00'), endedAt: at('13:00'), sentAt: in_(-200) }));
    expect(slow.body.warnings).toEqual([expect.stringMatching(/^The clock of the device was 2\d\d s slow\./)]);
  });
});
