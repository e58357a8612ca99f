import { v7 as uuidv7 } from 'uuid';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { type Client, makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestJob } from '../support/test-job.js';

describe('hours that phones push', () => {
  let test: TestApp;
  let company: TestCompany;
  let jobId: string;
  let counter = 0;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    jobId = await makeTestJob(test, company);
  });
  afterAll(() => test.close());

  const clientId = uuidv7();
  const mutation = (kind: string, body: object, more: object = {}) => ({ id: uuidv7(), counter: ++counter, kind, recordedAt: '2026-05-11T16:00:00Z', body, ...more });
  const push = async (person: Client, ...mutations: object[]) => {
    const { body } = await person.post('/v1/sync/push', { clientId, sentAt: new Date().toISOString(), mutations });
    return (body.items as { outcome: string; revision?: number; problem?: { code: string } }[]).map(({ outcome, revision, problem }) => [outcome, revision ?? problem?.code]);
  };
  const start = (startedAt: string) => ({ id: uuidv7(), jobId, personId: company.crew.personId, costCode: 'cleanout', startedAt });

  it('start and stop, by the time at which the phone took the stop down unless it says another', async () => {
    const first = start('2026-05-11T12:00:00Z');
    const second = start('2026-05-11T16:00:00Z');
    const told = await push(company.crew, mutation('time-entry.start', first), mutation('time-entry.stop', { id: first.id }), mutation('time-entry.start', second), mutation('time-entry.stop', { id: second.id, endedAt: '2026-05-11T17:00:00Z' }));
    expect(told).toEqual([['applied', 1], ['applied', 2], ['applied', 1], ['applied', 2]]);
    expect((await company.crew.get(`/v1/time-entries/${first.id}`)).body).toMatchObject({ endedAt: '2026-05-11T16:00:00.000Z', paidMinutes: '240', recordedAt: '2026-05-11T16:00:00.000Z' });
    expect((await company.crew.get(`/v1/time-entries/${second.id}`)).body.paidMinutes).toBe('60');
  });

  it('are corrected and voided at the revision that the phone saw', async () => {
    const body = { ...start('2026-05-12T12:00:00Z'), endedAt: '2026-05-12T16:00:00Z', note: 'First' };
    await push(company.crew, mutation('time-entry.log', body));
    const correct = { id: body.id, endedAt: '2026-05-12T15:30:00Z', note: null };
    expect(await push(company.crew, mutation('time-entry.correct', correct))).toEqual([['rejected', 'version-required']]);
    expect(await push(company.crew, mutation('time-entry.correct', correct, { baseRevision: 1 }))).toEqual([['applied', 2]]);
    expect((await company.crew.get(`/v1/time-entries/${body.id}`)).body).toMatchObject({ note: null, paidMinutes: '210', costCode: 'cleanout' });
    expect((await push(company.crew, mutation('time-entry.correct', { id: body.id, note: 'x' }, { baseRevision: 1 })))[0]?.[0]).toBe('conflict');
    expect((await push(company.crew, mutation('time-entry.void', { id: body.id, reason: 'Twice' }, { baseRevision: 1 })))[0]?.[0]).toBe('conflict');
    expect(await push(company.crew, mutation('time-entry.void', { id: body.id, reason: 'Twice' }, { baseRevision: 2 }))).toEqual([['applied', 3]]);
  });

  it('come late for a locked day and are kept, held', async () => {
    await company.owner.post('/v1/time-lock', { lockedThrough: '2026-05-20' });
    const body = { ...start('2026-05-13T12:00:00Z'), endedAt: '2026-05-13T16:00:00Z' };
    expect(await push(company.crew, mutation('time-entry.log', body))).toEqual([['applied', 1]]);
    expect((await company.crew.get(`/v1/time-entries/${body.id}`)).body.held).toBe(true);
  });
});
