import { v7 as uuidv7 } from 'uuid';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestJob } from '../support/test-job.js';

describe('the schedule', () => {
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

  const visit = (changes: object = {}) => ({ id: uuidv7(), jobId, day: '2027-05-11', startTime: '07:30', lengthMinutes: 480, personIds: [company.crew.personId], bring: ['Mud pump', 'Fish tank'], note: 'Drain first.', ...changes });
  const codes = (answer: { body: { warnings: { code: string }[] } }): string[] => answer.body.warnings.map(({ code }) => code);
  const problem = (answer: { status: number; body: { code: string; errors: { pointer: string }[] } }) => [answer.status, answer.body.code, answer.body.errors[0]?.pointer];

  it('plans a visit by the site\'s clocks and puts who comes on the crew of the job', async () => {
    const body = visit();
    const made = await company.crewLead.post('/v1/visits', body);
    expect([made.status, made.headers['etag']]).toEqual([201, '"1"']);
    expect(made.body).toEqual({
      ...body, timeZone: 'America/Detroit', startsAt: '2027-05-11T11:30:00.000Z', endsAt: '2027-05-11T19:30:00.000Z',
      state: 'planned', cancelReason: null, createdAt: expect.any(String), changedAt: expect.any(String), warnings: [],
    });
    const members = await test.sql<{ person_id: string }>('SELECT person_id FROM job_member WHERE company_id = $1 AND job_id = $2 AND left_at IS NULL', [company.id, jobId]);
    expect(members).toEqual([{ person_id: company.crew.personId }]);
  });

  it('answers a repeated visit with the first, and another body under its id with 409', async () => {
    const body = visit();
    const answers = await Promise.all(Array.from({ length: 5 }, () => company.owner.post('/v1/visits', body)));
    expect(answers.map(({ status }) => status).sort()).toEqual([200, 200, 200, 200, 201]);
    expect(problem(await company.owner.post('/v1/visits', { ...body, startTime: '08:00' }))).toEqual([409, 'id-taken', '/id']);
    expect((await company.owner.get(`/v1/visits?jobId=${jobId}`)).body.items).toHaveLength(1);
  });

  it('takes a visit over a clock change as the time that really passes', async () => {
    // 7 November 2027 in Detroit: 01:30 comes twice, the first at 05:30 UTC.
    const night = await company.owner.post('/v1/visits', visit({ day: '2027-11-07', startTime: '01:30', lengthMinutes: 120 }));
    expect([night.body.startsAt, night.body.endsAt]).toEqual(['2027-11-07T05:30:00.000Z', '2027-11-07T07:30:00.000Z']);
    // 14 March 2027 in Detroit: 02:30 does not exist.
    expect(problem(await company.owner.post('/v1/visits', visit({ day: '2027-03-14', startTime: '02:30' })))).toEqual([400, 'invalid-input', '/startTime']);
  });

  it.each([
    [{ startTime: '24:00' }, '/startTime'],
    [{ startTime: '7:30' }, '/startTime'],
    [{ day: '2027-02-30' }, '/day'],
    [{ lengthMinutes: 0 }, '/lengthMinutes'],
    [{ lengthMinutes: 1441 }, '/lengthMinutes'],
    [{ personIds: ['nobody'] }, '/personIds/0'],
    [{ bring: [''] }, '/bring/0'],
  ])('refuses %j with its place', async (changes, pointer) => {
    expect(problem(await company.owner.post('/v1/visits', visit(changes)))).toEqual([400, 'invalid-input', pointer]);
  });

  it('refuses somebody named twice, a person and a job that are not there, and lets crew plan nothing', async () => {
    const { personId } = company.crew;
    expect(problem(await company.owner.post('/v1/visits', visit({ personIds: [personId, personId.toUpperCase()] })))).toEqual([400, 'invalid-input', '/personIds/1']);
    expect(problem(await company.owner.post('/v1/visits', visit({ personIds: [personId, uuidv7()] })))).toEqual([422, 'no-such-reference', '/personIds/1']);
    expect(problem(await company.owner.post('/v1/visits', visit({ jobId: uuidv7() })))).toEqual([422, 'no-such-reference', '/jobId']);
    expect((await company.crew.post('/v1/visits', visit())).status).toBe(403);
    const stranger = await makeTestCompany(test);
    expect(problem(await company.owner.post('/v1/visits', visit({ personIds: [stranger.crew.personId] })))).toEqual([422, 'no-such-reference', '/personIds/0']);
  });

  it('warns of somebody who is planned elsewhere at that instant, whatever the zones, and not of one who comes after', async () => {
    const first = await company.owner.post('/v1/visits', visit({ lengthMinutes: 120 }));
    const other = await makeTestJob(test, company, { title: 'Mend the weir' });
    await test.sql("UPDATE job SET time_zone = 'America/Chicago' WHERE company_id = $1 AND id = $2", [company.id, other]);
    // 08:00 in Chicago is 09:00 in Detroit: within the first visit, 07:30 to 09:30. 08:30 there is when it ends.
    const clash = await company.owner.post('/v1/visits', visit({ jobId: other, startTime: '08:00' }));
    expect(codes(clash)).toEqual(['double-booked']);
    expect(clash.body.warnings[0]).toMatchObject({ personId: company.crew.personId, visitId: first.body.id });
    expect(codes(await company.owner.get(`/v1/visits/${first.body.id}`))).toEqual(['double-booked']);
    const moved = await company.owner.patch(`/v1/visits/${clash.body.id}`, { startTime: '08:30' });
    expect(codes(moved)).toEqual([]);
  });

  it('warns of no clash with a cancelled visit, or with one that the person was taken off', async () => {
    const first = await company.owner.post('/v1/visits', visit());
    const second = await company.owner.post('/v1/visits', visit());
    expect(codes(second)).toEqual(['double-booked']);
    const cancelled = await company.crewLead.post(`/v1/visits/${first.body.id}/cancel`, { reason: 'Rain' });
    expect(cancelled.body).toMatchObject({ state: 'cancelled', cancelReason: 'Rain', warnings: [] });
    expect(codes(await company.owner.get(`/v1/visits/${second.body.id}`))).toEqual([]);
    expect((await company.crewLead.post(`/v1/visits/${first.body.id}/cancel`, { reason: 'Again' })).body.cancelReason).toBe('Rain');
    expect(problem(await company.owner.patch(`/v1/visits/${first.body.id}`, { note: 'x' }))).toEqual([409, 'state-conflict', undefined]);
    expect(codes(await company.owner.post(`/v1/visits/${first.body.id}/restore`))).toEqual(['double-booked']);
    const alone = await company.owner.patch(`/v1/visits/${first.body.id}`, { personIds: [] });
    expect([alone.body.personIds, codes(alone)]).toEqual([[], []]);
    expect(codes(await company.owner.get(`/v1/visits/${second.body.id}`))).toEqual([]);
  });

  it('keeps the order of who comes, and takes a person back who was taken off', async () => {
    const { crew, crewLead } = company;
    const made = await company.owner.post('/v1/visits', visit({ personIds: [crew.personId, crewLead.personId] }));
    const path = `/v1/visits/${made.body.id}`;
    expect((await company.owner.patch(path, { personIds: [crewLead.personId] })).body.personIds).toEqual([crewLead.personId]);
    expect((await company.owner.patch(path, { personIds: [crewLead.personId, crew.personId] })).body.personIds).toEqual([crewLead.personId, crew.personId]);
    const stale = await company.owner.patch(path, { note: 'x' }, '"1"');
    expect([stale.status, stale.headers['etag']]).toEqual([412, '"3"']);
  });

  it('warns of days off, until they are withdrawn', async () => {
    const off = await company.crew.post('/v1/days-off', { personId: company.crew.personId, firstDay: '2027-05-10', lastDay: '2027-05-12', note: 'Back on Thursday' });
    expect(off.status).toBe(201);
    const made = await company.owner.post('/v1/visits', visit());
    expect(codes(made)).toEqual(['day-off']);
    expect(made.body.warnings[0].detail).toBe('Test crew has days off from 2027-05-10 to 2027-05-12.');
    // 22:00 on the 9th for four hours reaches into the 10th; for two hours it does not.
    expect(codes(await company.owner.post('/v1/visits', visit({ day: '2027-05-09', startTime: '22:00', lengthMinutes: 240 })))).toEqual(['day-off']);
    expect(codes(await company.owner.post('/v1/visits', visit({ day: '2027-05-09', startTime: '20:00', lengthMinutes: 120 })))).toEqual([]);
    await company.crew.post(`/v1/days-off/${off.body.id}/withdraw`);
    expect(codes(await company.owner.get(`/v1/visits/${made.body.id}`))).toEqual([]);
  });

  it('lets crew enter and see their own days off alone', async () => {
    const lead = await company.crewLead.post('/v1/days-off', { personId: company.crewLead.personId, firstDay: '2027-05-10' });
    expect(lead.body.lastDay).toBe('2027-05-10');
    expect(problem(await company.crew.post('/v1/days-off', { personId: company.crewLead.personId, firstDay: '2027-05-10' }))).toEqual([403, 'not-allowed', '/personId']);
    expect((await company.crew.get(`/v1/days-off/${lead.body.id}`)).status).toBe(404);
    expect((await company.crew.post(`/v1/days-off/${lead.body.id}/withdraw`)).status).toBe(404);
    expect((await company.crew.get('/v1/days-off')).body.items).toEqual([]);
    expect((await company.owner.get('/v1/days-off')).body.items).toHaveLength(1);
    expect(problem(await company.owner.patch(`/v1/days-off/${lead.body.id}`, { lastDay: '2027-05-09' }))).toEqual([400, 'invalid-input', '/lastDay']);
  });

  it('warns of what must come before, with its dates', async () => {
    const made = await company.owner.post('/v1/visits', visit());
    const blocker = await company.crewLead.post('/v1/blockers', { jobId, kind: 'utility-locate', requestedOn: '2027-05-07', clearOn: '2027-05-12', reference: 'Ticket 417' });
    expect(blocker.body.caution).toMatch(/^Call before you dig\. Local law/);
    const path = `/v1/blockers/${blocker.body.id}`;
    const seen = async (): Promise<string | undefined> => {
      const { body } = await company.crew.get(`/v1/visits/${made.body.id}`);
      return (body.warnings as { detail: string }[]).map(({ detail }) => detail.split('.')[0] ?? '').join('; ');
    };
    expect(await seen()).toBe('The utility locate (Ticket 417) is expected on 2027-05-12, after this visit');
    await company.owner.patch(path, { clearOn: '2027-05-10' });
    expect(await seen()).toBe('The utility locate (Ticket 417) was to be there by 2027-05-10 and is not confirmed yet');
    await company.owner.patch(path, { clearedOn: '2027-05-10' });
    expect(await seen()).toBe('');
    await company.owner.patch(path, { validUntil: '2027-05-10' });
    expect(await seen()).toBe('The utility locate (Ticket 417) holds only through 2027-05-10: ask for it anew');
    await company.owner.patch(path, { clearedOn: null, clearOn: null, validUntil: null });
    expect(await seen()).toBe('The utility locate (Ticket 417) was asked for on 2027-05-07, and nobody has said until when');
    await company.owner.patch(path, { requestedOn: null });
    expect(await seen()).toBe('The utility locate (Ticket 417) has not been asked for yet');
    await company.owner.post(`${path}/withdraw`);
    expect(await seen()).toBe('');
    expect(problem(await company.owner.patch(path, { note: 'x' }))).toEqual([409, 'state-conflict', undefined]);
  });

  it('refuses days of a blocker that contradict each other', async () => {
    const body = { jobId, kind: 'permit', requestedOn: '2027-05-07' };
    expect(problem(await company.owner.post('/v1/blockers', { ...body, clearOn: '2027-05-06' }))).toEqual([400, 'invalid-input', '/clearOn']);
    expect(problem(await company.owner.post('/v1/blockers', { ...body, clearedOn: '2027-05-06' }))).toEqual([400, 'invalid-input', '/clearedOn']);
    expect(problem(await company.owner.post('/v1/blockers', { ...body, clearedOn: '2027-05-10', validUntil: '2027-05-09' }))).toEqual([400, 'invalid-input', '/validUntil']);
  });

  it('warns of a closed job, of who left the company and of who left the crew', async () => {
    const { crew, crewLead } = company;
    const made = await company.owner.post('/v1/visits', visit({ personIds: [crew.personId, crewLead.personId] }));
    await company.owner.patch(`/v1/people/${crew.personId}`, { active: false });
    await test.sql('UPDATE job_member SET left_at = now() WHERE company_id = $1 AND person_id = $2', [company.id, crewLead.personId]);
    await company.owner.post(`/v1/jobs/${jobId}/cancel`, { reason: 'The customer sold the house.' });
    expect(codes(await company.owner.get(`/v1/visits/${made.body.id}`))).toEqual(['job-closed', 'not-active', 'not-on-crew']);
  });
});
