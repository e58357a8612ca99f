import { v7 as uuidv7 } from 'uuid';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { type Client, makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestJob } from '../support/test-job.js';

describe('hours that come late for a job', () => {
  let test: TestApp;
  let company: TestCompany;
  let jobId: string;
  let hourOfDay = 0;

  beforeAll(async () => {
    test = await startTestApp();
  });
  beforeEach(async () => {
    hourOfDay = 0;
    company = await makeTestCompany(test);
    jobId = await makeTestJob(test, company);
  });
  afterAll(() => test.close());

  const at = (hour: number): string => new Date(Date.UTC(2026, 2, 3, 12 + hour)).toISOString();
  const hours = (changes: object = {}) => {
    hourOfDay += 1;
    return { id: uuidv7(), jobId, personId: company.crew.personId, costCode: 'cleanout', startedAt: at(hourOfDay), endedAt: at(hourOfDay + 1), ...changes };
  };
  const log = async (body: object, by: Client = company.crew) => (await by.post('/v1/time-entries', body).expect(201)).body as { id: string; heldBecause: string[]; warnings: string[]; held: boolean };
  const close = (step: string, of = jobId) => company.owner.post(`/v1/jobs/${of}/${step}`, step === 'cancel' ? { reason: 'Called off' } : {}).expect(200);
  const lock = (lockedThrough: string | null) => company.owner.post('/v1/time-lock', { lockedThrough }).expect(200);
  const patch = (id: string, body: object, version: number, by: Client = company.crew) => by.patch(`/v1/time-entries/${id}`, body, `"${version}"`);
  const actual = async (of = jobId): Promise<string> => (await company.owner.get(`/v1/jobs/${of}/profitability`).expect(200)).body.hours.actual;
  const problem = (answer: { status: number; body: { code: string; errors: { pointer: string }[] } }) => [answer.status, answer.body.code, answer.body.errors[0]?.pointer];

  it.each([['finish', 'job-finished', 'finished'], ['cancel', 'job-cancelled', 'cancelled']])('are kept and held after %s, and count once the office releases them', async (step, reason, word) => {
    await log(hours());
    await close(step);
    const late = await log(hours());
    expect([late.held, late.heldBecause]).toEqual([true, [reason]]);
    expect(late.warnings).toEqual([`When these hours came in, the job was ${word}. They count for nothing until the office releases them.`]);
    expect(await actual()).toBe('1');
    expect((await company.crewLead.post(`/v1/time-entries/${late.id}/release`)).status).toBe(403);
    const released = await company.estimator.post(`/v1/time-entries/${late.id}/release`);
    expect([released.body.held, released.body.heldBecause, await actual()]).toEqual([false, [], '2']);
    const { body } = await company.owner.get(`/v1/time-entries/${late.id}/versions`);
    expect(body.items.map((item: { changedBy: string; heldBecause: string[] }) => [item.changedBy, item.heldBecause])).toEqual([[company.estimator.personId, []], [company.crew.personId, [reason]]]);
    expect((await company.owner.get(`/v1/jobs/${jobId}`)).body.state).toBe(word);
  });

  it('are held for somebody who left, whatever becomes of them before the office releases them', async () => {
    const [before, running] = [await log(hours()), await log(hours({ endedAt: null }))];
    expect((await company.owner.patch(`/v1/people/${company.crew.personId}`, { active: false })).status).toBe(200);
    const late = await log(hours(), company.crewLead);
    expect([late.held, late.heldBecause]).toEqual([true, ['person-inactive']]);
    expect(late.warnings).toEqual(['When these hours came in, the person was not active any more. They count for nothing until the office releases them.']);
    const stopped = await company.crewLead.post(`/v1/time-entries/${running.id}/stop`, { endedAt: at(3) }).expect(200);
    const corrected = await patch(late.id, { note: 'Raked' }, 1, company.crewLead);
    const moved = await log(hours({ personId: company.crewLead.personId }), company.crewLead);
    const given = await patch(moved.id, { personId: company.crew.personId }, 1, company.crewLead);
    expect([stopped, corrected, given].map(({ body }) => body.heldBecause)).toEqual([['person-inactive'], ['person-inactive'], ['person-inactive']]);
    // Those that counted before go on to count.
    expect((await patch(before.id, { note: 'Raked' }, 1, company.crewLead)).body.heldBecause).toEqual([]);
    expect(await actual()).toBe('1');
    expect((await company.owner.post(`/v1/time-entries/${late.id}/release`)).body.held).toBe(false);
    expect(await actual()).toBe('2');
  });

  it('tell every reason, and are found by the office until they are released or void', async () => {
    await log(hours());
    await close('finish');
    await lock('2026-03-03');
    const both = await log(hours());
    expect(both.heldBecause).toEqual(['day-locked', 'job-finished']);
    expect(both.warnings[0]).toContain('the day was locked and the job was finished');
    const other = await log(hours());
    const held = async () => (await company.owner.get('/v1/time-entries?held=true').expect(200)).body.items.map(({ id }: { id: string }) => id);
    expect(await held()).toEqual([other.id, both.id]);
    const voided = await company.crew.post(`/v1/time-entries/${other.id}/void`, { reason: 'Entered twice' });
    expect([voided.body.held, voided.body.heldBecause, voided.body.warnings]).toEqual([false, ['day-locked', 'job-finished'], []]);
    await company.owner.post(`/v1/time-entries/${both.id}/release`).expect(200);
    expect(await held()).toEqual([]);
    expect((await company.owner.get('/v1/time-entries?held=false').expect(200)).body.items).toHaveLength(3);
    expect(problem(await company.owner.get('/v1/time-entries?held=perhaps'))).toEqual([400, 'invalid-input', '/held']);
  });

  it('that ran when the job was finished are held once they are stopped, and are not released before', async () => {
    await log(hours());
    const running = await log(hours({ endedAt: null }));
    await close('finish');
    const started = await log(hours({ endedAt: null, personId: company.crewLead.personId }), company.crewLead);
    expect([running.heldBecause, started.heldBecause]).toEqual([[], ['job-finished']]);
    expect(problem(await company.owner.post(`/v1/time-entries/${started.id}/release`))).toEqual([409, 'state-conflict', undefined]);
    const stopped = await company.crew.post(`/v1/time-entries/${running.id}/stop`, { endedAt: at(hourOfDay + 1) });
    expect([stopped.status, stopped.body.heldBecause, await actual()]).toEqual([200, ['job-finished'], '1']);
    await close('reopen');
    const after = await company.crewLead.post(`/v1/time-entries/${started.id}/stop`, { endedAt: at(hourOfDay + 2) });
    expect([after.body.held, await actual()]).toEqual([false, '3']);
  });

  it('stay held when the job is taken up again, until the office releases them or they are corrected', async () => {
    await log(hours());
    await close('finish');
    const late = await log(hours());
    await close('reopen');
    expect(await actual()).toBe('1');
    expect((await patch(late.id, { note: 'Was there till noon' }, 1)).body.held).toBe(false);
    expect(await actual()).toBe('2');
  });

  it('start the job, or move its start back, only once they count', async () => {
    await close('cancel');
    const late = await log(hours({ startedAt: '2026-03-01T12:00:00Z', endedAt: '2026-03-01T13:00:00Z' }));
    const read = async () => (await company.owner.get(`/v1/jobs/${jobId}`)).body;
    expect(await read()).toMatchObject({ state: 'cancelled', startedOn: null });
    await company.owner.post(`/v1/time-entries/${late.id}/release`).expect(200);
    expect(await read()).toMatchObject({ state: 'cancelled', startedOn: '2026-03-01' });
    await close('reopen');
    expect((await read()).state).toBe('under-way');
  });

  it('and wrong ones that count there are corrected and voided with a reason, and go on to count', async () => {
    const [wrong, twice] = [await log(hours()), await log(hours())];
    await close('finish');
    expect(problem(await patch(wrong.id, { costCode: 'edge' }, 1))).toEqual([400, 'invalid-input', '/reason']);
    const corrected = await patch(wrong.id, { costCode: 'edge', unpaidBreakMinutes: 30, reason: 'Half an hour of it was lunch' }, 1);
    expect([corrected.status, corrected.body.held, await actual()]).toEqual([200, false, '1.5']);
    expect((await company.crew.post(`/v1/time-entries/${twice.id}/void`, { reason: 'Entered twice' })).status).toBe(200);
    expect(await actual()).toBe('0.5');
    const still = await log(hours());
    expect((await patch(still.id, { note: 'Held hours need no reason' }, 1)).body).toMatchObject({ held: true, heldBecause: ['job-finished'] });
  });

  it('are not corrected or voided on a locked day, as ever', async () => {
    const { id } = await log(hours());
    await close('finish');
    await lock('2026-03-03');
    for (const refused of [await patch(id, { note: 'x', reason: 'x' }, 1, company.owner), await company.owner.post(`/v1/time-entries/${id}/void`, { reason: 'x' })]) {
      expect(problem(refused)).toEqual([409, 'period-locked', '/startedAt']);
    }
  });

  it('are held where a correction moves them to a closed job, and count where it moves them to an open one', async () => {
    const open = await makeTestJob(test, company);
    const [away, here] = [await log(hours()), await log(hours({ jobId: open }))];
    await close('finish');
    expect(problem(await patch(here.id, { jobId }, 1))).toEqual([400, 'invalid-input', '/reason']);
    expect((await patch(here.id, { jobId, reason: 'It was the other pond' }, 1)).body.heldBecause).toEqual(['job-finished']);
    expect(problem(await patch(away.id, { jobId: open }, 1))).toEqual([400, 'invalid-input', '/reason']);
    expect((await patch(away.id, { jobId: open, reason: 'It was the other pond' }, 1)).body.heldBecause).toEqual([]);
    expect([await actual(), await actual(open)]).toEqual(['0', '1']);
    expect((await patch(here.id, { jobId: open }, 2)).body.held).toBe(false);
  });

  it('are held although the day that held them was opened, when the job was finished since', async () => {
    await log(hours());
    await lock('2026-03-03');
    const late = await log(hours());
    await close('finish');
    await lock(null);
    expect((await patch(late.id, { note: 'x' }, 1)).body.heldBecause).toEqual(['job-finished']);
  });

  it('either count or are held when the job is finished at the same moment', async () => {
    await log(hours());
    const bodies = Array.from({ length: 8 }, () => hours());
    const [, ...answers] = await Promise.all([company.owner.post(`/v1/jobs/${jobId}/finish`), ...bodies.map((body) => company.crew.post('/v1/time-entries', body))]);
    expect(answers.map(({ status }) => status)).toEqual(Array(8).fill(201));
    const counting = answers.filter(({ body }) => body.held === false).length;
    expect(await actual()).toBe(String(1 + counting));
  });
});
