import { v7 as uuidv7 } from 'uuid';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { type Client, makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestJob } from '../support/test-job.js';

describe('hours that are approved and settled', () => {
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
  afterAll(() => test.close());

  /** A moment of a day in March in Detroit, before the clocks go forward. */
  const at = (day: number, time: string): string => `2026-03-0${day}T${time}:00-05:00`;
  const hours = (person: Client, changes: object = {}) => ({ id: uuidv7(), jobId, personId: person.personId, costCode: 'cleanout', startedAt: at(3, '08:00'), endedAt: at(3, '12:00'), ...changes });
  const log = async (by: Client, body: object) => (await by.post('/v1/time-entries', body)).body as { id: string; held: boolean; warnings: string[]; approvedAt: string | null };
  const problem = (answer: { status: number; body: { code: string; errors: { pointer: string }[] } }) => [answer.status, answer.body.code, answer.body.errors[0]?.pointer];
  const approve = (by: Client, person: Client, day = '2026-03-03') => by.post('/v1/time-approvals', { personId: person.personId, day });
  const lock = (lockedThrough: string | null) => company.owner.post('/v1/time-lock', { lockedThrough });
  const actualHours = async () => (await company.owner.get(`/v1/jobs/${jobId}/profitability`)).body.hours.actual as string;

  it('approves the finished hours of a day in the company\'s zone, and what comes in later only when asked again', async () => {
    const first = await log(company.crew, hours(company.crew));
    await log(company.crew, hours(company.crew, { startedAt: at(2, '23:00'), endedAt: at(3, '01:00') }));
    const late = await log(company.crew, hours(company.crew, { startedAt: at(3, '23:30'), endedAt: at(4, '00:30') }));
    const approved = await approve(company.crewLead, company.crew);
    expect([approved.status, approved.body.complete]).toEqual([200, true]);
    expect(approved.body.entries.map(({ id, approvedBy }: { id: string; approvedBy: string }) => [id, approvedBy])).toEqual([[first.id, company.crewLead.personId], [late.id, company.crewLead.personId]]);
    const running = await log(company.crew, hours(company.crew, { startedAt: at(3, '13:00'), endedAt: null }));
    expect((await approve(company.crewLead, company.crew)).body.complete).toBe(false);
    await company.crew.post(`/v1/time-entries/${running.id}/stop`, { endedAt: at(3, '14:00') });
    expect((await approve(company.crewLead, company.crew)).body.complete).toBe(true);
    expect((await company.crew.get(`/v1/time-entries/${first.id}`)).headers['etag']).toBe('"2"');
  });

  it('lets a lead approve crew, the office everybody, and nobody but the owner themselves', async () => {
    const asked = [
      await approve(company.crewLead, company.crewLead), await approve(company.crewLead, company.estimator), await approve(company.estimator, company.estimator),
      await approve(company.estimator, company.crewLead), await approve(company.owner, company.owner),
    ];
    expect(asked.map(({ status }) => status)).toEqual([403, 403, 403, 200, 200]);
    expect((await approve(company.crew, company.crew)).status).toBe(403);
    expect(problem(await company.owner.post('/v1/time-approvals', { personId: uuidv7(), day: '2026-03-03' }))).toEqual([422, 'no-such-reference', '/personId']);
  });

  it('needs a reason to correct what is approved, which takes the approval away', async () => {
    const { id } = await log(company.crew, hours(company.crew));
    await approve(company.crewLead, company.crew);
    const path = `/v1/time-entries/${id}`;
    expect(problem(await company.crew.patch(path, { endedAt: at(3, '12:30') }, '"2"'))).toEqual([400, 'invalid-input', '/reason']);
    const corrected = await company.crew.patch(path, { endedAt: at(3, '12:30'), reason: 'The truck was stuck' }, '"2"');
    expect([corrected.status, corrected.body.approvedAt, corrected.body.approvedBy]).toEqual([200, null, null]);
  });

  it('takes an approval back with a reason', async () => {
    const { id } = await log(company.crew, hours(company.crew));
    await approve(company.crewLead, company.crew);
    const body = { personId: company.crew.personId, day: '2026-03-03' };
    expect(problem(await company.crewLead.post('/v1/time-approvals/withdraw', body))).toEqual([400, 'invalid-input', '/reason']);
    const withdrawn = await company.crewLead.post('/v1/time-approvals/withdraw', { ...body, reason: 'Travel is missing' });
    expect([withdrawn.body.complete, withdrawn.body.entries[0].approvedAt]).toEqual([false, null]);
    expect((await company.crewLead.get(`/v1/time-entries/${id}/versions`)).body.items[0]).toMatchObject({ version: 3, reason: 'Travel is missing' });
  });

  it('tells every version with who, when and why, newest first', async () => {
    const { id } = await log(company.crew, hours(company.crew, { note: 'First' }));
    const path = `/v1/time-entries/${id}`;
    await company.crewLead.patch(path, { costCode: 'edge', note: null, reason: 'Was the edge' }, '"1"');
    await company.crewLead.patch(path, { costCode: 'edge' }, '"2"');
    await company.owner.post(`${path}/void`, { reason: 'Entered twice' });
    const { body } = await company.crew.get(`${path}/versions`);
    const told = body.items.map((item: Record<string, unknown>) => [item['version'], item['changedBy'], item['reason'], item['costCode'], item['note'], item['voidedAt'] !== null]);
    expect(told).toEqual([
      [4, company.owner.personId, 'Entered twice', 'edge', null, true],
      [3, company.crewLead.personId, null, 'edge', null, false],
      [2, company.crewLead.personId, 'Was the edge', 'edge', null, false],
      [1, company.crew.personId, null, 'cleanout', 'First', false],
    ]);
    expect(body.items[3]).toMatchObject({ startedAt: new Date(at(3, '08:00')).toISOString(), endedAt: new Date(at(3, '12:00')).toISOString(), changedAt: expect.stringMatching(/Z$/) });
    const leads = await log(company.crewLead, hours(company.crewLead));
    expect((await company.crew.get(`/v1/time-entries/${leads.id}/versions`)).status).toBe(404);
  });

  it('tells versions in the order of the changes, not of the transactions that made them', async () => {
    const { id } = await log(company.crew, hours(company.crew, { note: 'First' }));
    await test.inTransaction(async (query) => {
      await query('SELECT pg_current_xact_id()');
      expect((await company.crew.patch(`/v1/time-entries/${id}`, { note: 'Second' }, '"1"')).status).toBe(200);
      await query("UPDATE time_entry SET note = 'Third', version = 3 WHERE id = $1", [id]);
    });
    const { body } = await company.crew.get(`/v1/time-entries/${id}/versions`);
    expect(body.items.map((item: Record<string, unknown>) => [item['version'], item['note']])).toEqual([[3, 'Third'], [2, 'Second'], [1, 'First']]);
  });

  it('locks days that are over, for the owner alone', async () => {
    test.setClock('2026-03-05T04:30:00Z');
    try {
      // 23:30 on 4 March in Detroit: that day is not over there, though it is in UTC.
      expect(problem(await lock('2026-03-04'))).toEqual([422, 'not-possible', '/lockedThrough']);
      expect((await lock('2026-03-03')).body).toMatchObject({ lockedThrough: '2026-03-03', lockedBy: company.owner.personId });
    } finally {
      test.setClock(null);
    }
    expect((await company.estimator.post('/v1/time-lock', { lockedThrough: null })).status).toBe(403);
    expect((await company.crew.get('/v1/time-lock')).body.lockedThrough).toBe('2026-03-03');
    expect((await lock(null)).body.lockedThrough).toBeNull();
  });

  it('refuses every change of hours that count in a locked day, and none of the day after', async () => {
    const settled = await log(company.crew, hours(company.crew, { startedAt: at(3, '23:30'), endedAt: at(4, '00:30') }));
    const open = await log(company.crew, hours(company.crew, { startedAt: at(4, '08:00'), endedAt: at(4, '12:00') }));
    await lock('2026-03-03');
    const refused = [
      await company.owner.patch(`/v1/time-entries/${settled.id}`, { note: 'x' }, '"1"'),
      await company.owner.post(`/v1/time-entries/${settled.id}/void`, { reason: 'x' }),
      await company.owner.patch(`/v1/time-entries/${open.id}`, { startedAt: at(3, '20:00'), endedAt: at(3, '21:00') }, '"1"'),
      await approve(company.owner, company.crew),
      await company.owner.post('/v1/time-approvals/withdraw', { personId: company.crew.personId, day: '2026-03-03', reason: 'x' }),
    ];
    expect(refused.map(problem)).toEqual(Array(5).fill([409, 'period-locked', '/startedAt']));
    expect((await company.crew.patch(`/v1/time-entries/${open.id}`, { note: 'x' }, '"1"')).status).toBe(200);
    await lock(null);
    expect((await company.owner.patch(`/v1/time-entries/${settled.id}`, { note: 'x' }, '"1"')).status).toBe(200);
  });

  it('keeps late hours of a locked day without counting them, until the office releases them', async () => {
    await log(company.crew, hours(company.crew));
    const running = await log(company.crewLead, hours(company.crewLead, { endedAt: null }));
    await lock('2026-03-03');
    const late = await log(company.crew, hours(company.crew, { startedAt: at(3, '13:00'), endedAt: at(3, '15:00') }));
    expect([late.held, late.warnings[0]]).toEqual([true, expect.stringContaining('locked')]);
    const stopped = await company.crewLead.post(`/v1/time-entries/${running.id}/stop`, { endedAt: at(3, '09:00') });
    expect(stopped.body.held).toBe(true);
    expect(await actualHours()).toBe('4');
    expect((await company.crew.patch(`/v1/time-entries/${late.id}`, { endedAt: at(3, '14:30') }, '"1"')).body).toMatchObject({ held: true, paidMinutes: '90' });
    expect((await company.crewLead.post(`/v1/time-entries/${late.id}/release`)).status).toBe(403);
    const released = await company.estimator.post(`/v1/time-entries/${late.id}/release`);
    expect([released.status, released.body.held, await actualHours()]).toEqual([200, false, '5.5']);
    expect((await company.estimator.post(`/v1/time-entries/${late.id}/release`)).body).toEqual(released.body);
    expect(problem(await company.crew.patch(`/v1/time-entries/${late.id}`, { note: 'x' }, '"3"'))).toEqual([409, 'period-locked', '/startedAt']);
    const moved = await company.crewLead.patch(`/v1/time-entries/${running.id}`, { startedAt: at(4, '08:00'), endedAt: at(4, '09:00') }, '"2"');
    expect([moved.status, moved.body.held]).toEqual([200, false]);
  });

  it('logs for several people in one request, with an outcome for each item', async () => {
    const good = hours(company.crew);
    const answer = await company.crewLead.post('/v1/time-entries/batch', { items: [good, hours(company.crewLead), hours(company.crew), { ...good, personId: 7 }, null, good] });
    expect(answer.status).toBe(200);
    const told = answer.body.items.map((item: { outcome: string; entry?: { personId: string }; problem?: { code: string; errors: { pointer: string }[] } }) => [item.outcome, item.entry?.personId ?? item.problem?.code, item.problem?.errors[0]?.pointer]);
    expect(told).toEqual([
      ['made', company.crew.personId, undefined], ['made', company.crewLead.personId, undefined], ['refused', 'time-overlap', '/startedAt'],
      ['refused', 'invalid-input', '/personId'], ['refused', 'invalid-input', ''], ['repeated', company.crew.personId, undefined],
    ]);
    expect(JSON.stringify(answer.body)).not.toContain('laborCost');
    for (const items of [[], Array(501).fill(good), 'x', undefined]) expect(problem(await company.crewLead.post('/v1/time-entries/batch', { items }))).toEqual([400, 'invalid-input', '/items']);
  });
});
