import { v7 as uuidv7 } from 'uuid';
import { addDays } from '../../src/platform/clock/clock.js';
import { TenantDatabase } from '../../src/platform/database/tenant-database.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { type Client, makeTestCompany, type TestCompany } from '../support/test-company.js';
import { actorOf, makeTestJob } from '../support/test-job.js';

const MONEY = /amount|price|cost(?!Code)|wage|burden|margin|total/i;

describe('time entries', () => {
  let test: TestApp;
  let company: TestCompany;
  let jobId: string;
  let day = 0;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
  });
  beforeEach(async () => {
    jobId = await makeTestJob(test, company);
    day += 1;
  });
  afterAll(() => test.close());

  /** A time of this test's own day, in Detroit in summer. */
  const at = (time: string): string => `${addDays('2027-05-01', day)}T${time}:00-04:00`;
  const hours = (person: Client, changes: object = {}) => ({ id: uuidv7(), jobId, personId: person.personId, costCode: 'cleanout', startedAt: at('07:30'), endedAt: at('16:00'), unpaidBreakMinutes: 30, ...changes });
  const problem = (answer: { status: number; body: { code: string; errors: { pointer: string }[] } }) => [answer.status, answer.body.code, answer.body.errors[0]?.pointer];

  it('logs a crew\'s own hours without any money, and shows the office what they cost', async () => {
    const body = hours(company.crew, { note: 'Bottom is softer than probed' });
    const made = await company.crew.post('/v1/time-entries', body);
    expect(made.status).toBe(201);
    expect(made.headers['etag']).toBe('"1"');
    expect(made.body).toEqual({
      ...body, startedAt: new Date(body.startedAt).toISOString(), endedAt: new Date(body.endedAt).toISOString(),
      kind: 'work', breaks: [], paidMinutes: '480', recordedBy: company.crew.personId, recordedAt: null, receivedAt: expect.any(String), clockSkewSeconds: null,
      held: false, heldBecause: [], approvedAt: null, approvedBy: null, voidedAt: null, voidReason: null, createdAt: expect.any(String), warnings: [],
    });
    // 8 h × 24.00 × 1.225, from the rule of the API's contract.
    const seen = await company.estimator.get(`/v1/time-entries/${body.id}`);
    expect(seen.body.laborCost).toEqual({ amount: '235.20', currency: 'USD' });
  });

  it.each(['crewLead', 'crew'] as const)('gives %s no money, in an entry or in the list', async (role) => {
    const { body } = await company[role].post('/v1/time-entries', hours(company[role]));
    const list = await company[role].get('/v1/time-entries');
    const changed = await company[role].patch(`/v1/time-entries/${body.id}`, { note: 'x' }, '"1"');
    for (const entry of [body, changed.body, ...list.body.items]) expect(Object.keys(entry).filter((name) => MONEY.test(name))).toEqual([]);
    expect(list.body.items.length).toBeGreaterThan(0);
  });

  it('answers a repeated hour with the first result, and another body with 409', async () => {
    const body = hours(company.crew);
    const first = await company.crew.post('/v1/time-entries', body);
    const again = await company.crew.post('/v1/time-entries', body);
    const other = await company.crew.post('/v1/time-entries', { ...body, note: 'Changed' });
    expect([first.status, again.status]).toEqual([201, 200]);
    expect(again.body).toEqual(first.body);
    expect(problem(other)).toEqual([409, 'id-taken', '/id']);
  });

  it('counts an hour once that a phone sends ten times at the same moment', async () => {
    const body = hours(company.crew);
    const answers = await Promise.all(Array.from({ length: 10 }, () => company.crew.post('/v1/time-entries', body)));
    expect(answers.map((answer) => answer.status).sort()).toEqual([...Array<number>(9).fill(200), 201]);
    expect(new Set(answers.map((answer) => JSON.stringify(answer.body))).size).toBe(1);
  });

  it('still answers a repeated hour when the job was finished in the meantime', async () => {
    const body = hours(company.crew);
    const first = await company.crew.post('/v1/time-entries', body);
    await company.owner.post(`/v1/jobs/${jobId}/finish`);
    const again = await company.crew.post('/v1/time-entries', body);
    expect([again.status, again.body]).toEqual([200, first.body]);
  });

  it('starts a planned job on the day of its earliest hour, whatever order the hours come in', async () => {
    await company.crew.post('/v1/time-entries', hours(company.crew));
    // 23:30 on the day before in Detroit, which is this day already in UTC.
    const evening = { startedAt: at('03:30').replace('-04:00', 'Z'), endedAt: at('03:45').replace('-04:00', 'Z'), unpaidBreakMinutes: 0 };
    const read = async () => (await company.crew.get(`/v1/jobs/${jobId}`)).body;
    const today = at('00:00').slice(0, 10);
    expect(await read()).toMatchObject({ state: 'under-way', startedOn: today });
    await company.crewLead.post('/v1/time-entries', hours(company.crewLead, evening));
    expect((await read()).startedOn).toBe(addDays(today, -1));
  });

  it('refuses hours that overlap others of the same person, also on another job, and takes hours that only touch', async () => {
    await company.crew.post('/v1/time-entries', hours(company.crew));
    const over = await company.crew.post('/v1/time-entries', hours(company.crew, { jobId: await makeTestJob(test, company), startedAt: at('15:59'), endedAt: at('17:00') }));
    expect(problem(over)).toEqual([409, 'time-overlap', '/startedAt']);
    const touching = await company.crew.post('/v1/time-entries', hours(company.crew, { startedAt: at('16:00'), endedAt: at('17:00') }));
    const somebodyElse = await company.crewLead.post('/v1/time-entries', hours(company.crewLead));
    expect([touching.status, somebodyElse.status]).toEqual([201, 201]);
  });

  it('keeps one of two overlapping hours that two phones log at once', async () => {
    const answers = await Promise.all([company.crew, company.crewLead, company.owner].map((phone) => phone.post('/v1/time-entries', hours(company.crew))));
    expect(answers.map((answer) => answer.status).sort()).toEqual([201, 409, 409]);
  });

  it.each([
    ['an end before the start', { endedAt: '2027-05-01T07:00:00-04:00', startedAt: '2027-05-01T08:00:00-04:00' }, '/endedAt'],
    ['more than a day', { startedAt: '2027-05-01T07:00:00-04:00', endedAt: '2027-05-02T07:00:01-04:00' }, '/endedAt'],
    ['a break longer than the work', { unpaidBreakMinutes: 511 }, '/unpaidBreakMinutes'],
    ['a broken minute of break', { unpaidBreakMinutes: 0.5 }, '/unpaidBreakMinutes'],
    ['a negative break', { unpaidBreakMinutes: -1 }, '/unpaidBreakMinutes'],
    ['a bare local time', { startedAt: '2027-05-01T07:00:00' }, '/startedAt'],
    ['a day that does not exist', { startedAt: '2027-02-30T07:00:00Z' }, '/startedAt'],
    ['a year out of range', { endedAt: '9999-05-01T07:00:00Z' }, '/endedAt'],
    ['no cost code', { costCode: null }, '/costCode'],
    ['a cost code that is none', { costCode: 'Clean Out' }, '/costCode'],
    ['a note beyond its length', { note: 'x'.repeat(1001) }, '/note'],
    ['an id that is none', { jobId: 'J-1001' }, '/jobId'],
    ['a wage of its own', { hourlyWage: '99' }, '/hourlyWage'],
  ])('refuses %s', async (_, changes, pointer) => {
    expect(problem(await company.owner.post('/v1/time-entries', hours(company.crew, changes)))).toEqual([400, 'invalid-input', pointer]);
  });

  it('takes a leap second as an instant, not as a failure', async () => {
    const answer = await company.owner.post('/v1/time-entries', hours(company.crew, { startedAt: '2016-12-31T22:00:00Z', endedAt: '2016-12-31T23:59:60Z', unpaidBreakMinutes: 0 }));
    expect(answer.status).toBe(201);
    expect(answer.body.endedAt).toBe('2016-12-31T23:59:59.000Z');
  });

  it('counts the hours really worked in a night on which the clocks go forward', async () => {
    // 23:00 to 07:30 with 30 minutes of meal is 7 hours: US Department of Labor, FLSA Hours Worked Advisor, "Daylight Savings Time".
    const { body } = await company.owner.post('/v1/time-entries', hours(company.crew, { startedAt: '2027-03-13T23:00:00-05:00', endedAt: '2027-03-14T07:30:00-04:00' }));
    expect(body.paidMinutes).toBe('420');
  });

  it('refuses a cost code that the job does not have, and names those it has', async () => {
    const answer = await company.crew.post('/v1/time-entries', hours(company.crew, { costCode: 'planting' }));
    expect(problem(answer)).toEqual([422, 'not-possible', '/costCode']);
    expect(answer.body.errors[0].detail).toBe('must be one of cleanout, edge, filtration, travel, yard, warranty');
    const general = await company.crew.post('/v1/time-entries', hours(company.crew, { costCode: 'travel' }));
    expect(general.status).toBe(201);
  });

  it('takes ids in upper case as the same ids', async () => {
    const answer = await company.crew.post('/v1/time-entries', hours(company.crew, { jobId: jobId.toUpperCase(), personId: company.crew.personId.toUpperCase() }));
    expect([answer.status, answer.body.jobId, answer.body.personId]).toEqual([201, jobId, company.crew.personId]);
  });

  it('refuses a job or a person that is not there, or is another company\'s', async () => {
    const other = await makeTestCompany(test);
    for (const strange of [uuidv7(), await makeTestJob(test, other)]) {
      expect(problem(await company.owner.post('/v1/time-entries', hours(company.crew, { jobId: strange })))).toEqual([422, 'no-such-reference', '/jobId']);
    }
    for (const strange of [uuidv7(), other.crew.personId]) {
      expect(problem(await company.owner.post('/v1/time-entries', hours(company.crew, { personId: strange })))).toEqual([422, 'no-such-reference', '/personId']);
    }
  });

  it('lets crew log and see only themselves, and a crew lead everybody', async () => {
    const forAnother = await company.crew.post('/v1/time-entries', hours(company.crewLead));
    expect(problem(forAnother)).toEqual([403, 'not-allowed', '/personId']);
    const byLead = await company.crewLead.post('/v1/time-entries', hours(company.crew));
    expect([byLead.status, byLead.body.recordedBy]).toEqual([201, company.crewLead.personId]);
    const leads = await company.crewLead.post('/v1/time-entries', hours(company.crewLead));
    const path = `/v1/time-entries/${leads.body.id}`;
    const hidden = [await company.crew.get(path), await company.crew.patch(path, { note: 'x' }, '"1"'), await company.crew.post(`${path}/void`, { reason: 'x' })];
    expect(hidden.map((answer) => answer.status)).toEqual([404, 404, 404]);
    const mine = await company.crew.get(`/v1/time-entries?jobId=${jobId}`);
    expect(mine.body.items.map((entry: { id: string }) => entry.id)).toEqual([byLead.body.id]);
    expect(problem(await company.crew.get(`/v1/time-entries?personId=${company.crewLead.personId}`))).toEqual([403, 'not-allowed', '/personId']);
    const all = await company.crewLead.get(`/v1/time-entries?jobId=${jobId}`);
    expect(all.body.items).toHaveLength(2);
    const one = await company.estimator.get(`/v1/time-entries?jobId=${jobId}&personId=${company.crew.personId}`);
    expect(one.body.items.map((entry: { id: string }) => entry.id)).toEqual([byLead.body.id]);
    const handedOver = await company.crew.patch(`/v1/time-entries/${byLead.body.id}`, { personId: company.crewLead.personId }, '"1"');
    expect(problem(handedOver)).toEqual([403, 'not-allowed', '/personId']);
  });

  it('corrects an entry at the version that was read, under the same rules as a new one', async () => {
    const { body } = await company.crew.post('/v1/time-entries', hours(company.crew));
    const later = await company.crew.post('/v1/time-entries', hours(company.crew, { startedAt: at('17:00'), endedAt: at('18:00') }));
    const path = `/v1/time-entries/${body.id}`;
    const changed = await company.crew.patch(path, { endedAt: at('16:30'), unpaidBreakMinutes: null, costCode: 'edge' }, '"1"');
    expect([changed.status, changed.headers['etag']]).toEqual([200, '"2"']);
    expect(changed.body).toMatchObject({ costCode: 'edge', unpaidBreakMinutes: 0, paidMinutes: '540' });
    const stale = await company.crew.patch(path, { note: 'x' }, '"1"');
    expect([stale.status, stale.headers['etag']]).toEqual([412, '"2"']);
    const over = await company.crew.patch(path, { endedAt: at('17:01') }, '"2"');
    expect(problem(over)).toEqual([409, 'time-overlap', '/startedAt']);
    expect(over.body.errors[0].detail).toContain(later.body.id);
    expect(problem(await company.crew.patch(path, { endedAt: at('07:00') }, '"2"'))).toEqual([400, 'invalid-input', '/endedAt']);
    expect(problem(await company.crew.patch(path, { costCode: 'planting' }, '"2"'))).toEqual([422, 'not-possible', '/costCode']);
    expect(problem(await company.crew.patch(path, { jobId: uuidv7() }, '"2"'))).toEqual([422, 'no-such-reference', '/jobId']);
    expect(problem(await company.crew.patch(path, { id: uuidv7() }, '"2"'))).toEqual([400, 'invalid-input', '/id']);
    expect((await company.crew.get(path)).body).toEqual(changed.body);
  });

  it('moves the start back when a correction makes an hour earlier than the job\'s first day', async () => {
    const { body } = await company.crew.post('/v1/time-entries', hours(company.crew));
    await company.crew.patch(`/v1/time-entries/${body.id}`, { startedAt: '2027-04-02T08:00:00-04:00', endedAt: '2027-04-02T12:00:00-04:00' }, '"1"');
    expect((await company.crew.get(`/v1/jobs/${jobId}`)).body.startedOn).toBe('2027-04-02');
  });

  it('keeps the wage of the day of entry after a raise, and takes the wage of the person whose hours they turn out to be', async () => {
    const person = await company.owner.post('/v1/people', { name: 'Pia Sorrel', email: `pia-${day}@fernhollow.example`, role: 'crew', hourlyWage: '20.00', burdenPercent: '0' });
    const { body } = await company.owner.post('/v1/time-entries', hours(company.crew, { personId: person.body.id }));
    const path = `/v1/time-entries/${body.id}`;
    expect(body.laborCost.amount).toBe('160.00');
    await company.owner.patch(`/v1/people/${person.body.id}`, { hourlyWage: '30.00' }, '"1"');
    expect((await company.owner.get(path)).body.laborCost.amount).toBe('160.00');
    expect((await company.owner.patch(path, { note: 'x' }, '"1"')).body.laborCost.amount).toBe('160.00');
    const moved = await company.owner.patch(path, { personId: company.crew.personId }, '"2"');
    expect(moved.body.laborCost.amount).toBe('235.20');
    expect((await company.owner.patch(path, { personId: person.body.id }, '"3"')).body.laborCost.amount).toBe('240.00');
  });

  it('voids an entry with a reason once, which frees its time', async () => {
    const { body } = await company.crew.post('/v1/time-entries', hours(company.crew));
    const path = `/v1/time-entries/${body.id}`;
    expect(problem(await company.crew.post(`${path}/void`, {}))).toEqual([400, 'invalid-input', '/reason']);
    const voided = await company.crew.post(`${path}/void`, { reason: 'Wrong day' });
    expect(voided.body).toMatchObject({ id: body.id, voidReason: 'Wrong day', voidedAt: expect.stringMatching(/Z$/) });
    const again = await company.crew.post(`${path}/void`, { reason: 'Another reason' });
    expect([again.status, again.body]).toEqual([200, voided.body]);
    expect(problem(await company.crew.patch(path, { note: 'x' }, '"2"'))).toEqual([409, 'state-conflict', undefined]);
    expect((await company.crew.post('/v1/time-entries', hours(company.crew))).status).toBe(201);
  });

  it('hides the entries of another company', async () => {
    const { body } = await company.crew.post('/v1/time-entries', hours(company.crew));
    const other = await makeTestCompany(test);
    const path = `/v1/time-entries/${body.id}`;
    const answers = [await other.owner.get(path), await other.owner.patch(path, { note: 'x' }, '"1"'), await other.owner.post(`${path}/void`, { reason: 'x' })];
    expect(answers.map((answer) => answer.status)).toEqual([404, 404, 404]);
    expect((await other.owner.get('/v1/time-entries')).body.items).toEqual([]);
  });

  it('gives the service no right to delete an entry', async () => {
    const { body } = await company.crew.post('/v1/time-entries', hours(company.crew));
    const run = test.app.get(TenantDatabase).write(actorOf(company), (manager) => manager.query('DELETE FROM time_entry WHERE id = $1', [body.id]));
    await expect(run).rejects.toThrow('permission denied');
  });
});
