import { StopTimeBody } from '../../src/features/time-entries/time-entries.dto.js';
import { JobCrew } from '../../src/features/jobs/index.js';
import { EVERYONE } from '../../src/platform/auth/actor.js';
import { MutationKinds } from '../../src/platform/sync/mutation-kinds.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { enrolDevice, signInDevice } from '../support/test-device.js';
import { actorOf, makeTestJob } from '../support/test-job.js';
import { hour, TestPhone } from './support.js';

describe('a lost phone', () => {
  let test: TestApp;
  let company: TestCompany;
  let jobId: string;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    jobId = await makeTestJob(test, company);
    await test.app.get(JobCrew, { strict: false }).join(actorOf(company), jobId, [company.crew.personId]);
  });
  afterAll(() => test.close());

  const logged = async (): Promise<number> => (await test.sql<{ n: number }>('SELECT count(*)::int AS n FROM time_entry WHERE job_id = $1', [jobId]))[0]?.n ?? -1;

  it('hands nothing in and gets nothing once it is revoked, and is told what becomes of its hours', async () => {
    const device = await enrolDevice(test, company.crewLead, company.crew.personId);
    const phone = new TestPhone(device.client, test);
    const kept = [phone.mutation('time-entry.log', hour(jobId, company.crew.personId, 0)), phone.mutation('time-entry.log', hour(jobId, company.crew.personId, 1))];
    expect((await phone.push(kept.slice(0, 1))).map(({ outcome }) => outcome)).toEqual(['applied']);
    await phone.pull();
    await company.crewLead.post(`/v1/devices/${device.id}/revoke`, { reason: 'Fell into the pond.' });
    for (const refused of [await device.client.post('/v1/sync/push', { clientId: phone.clientId, mutations: kept }), await device.client.get(`/v1/sync/pull?cursor=${phone.cursor}`), await device.client.get('/v1/time-entries')]) {
      expect([refused.status, refused.body.code, refused.body.items]).toEqual([401, 'device-revoked', undefined]);
      expect(refused.body.detail).toMatch(/what it has not sent must be handed in by another way/);
    }
    expect(await logged()).toBe(1);
    // The other way: the hours that were still on it, entered by the lead; what had arrived stays and is counted once.
    const lead = new TestPhone(company.crewLead, test);
    expect((await lead.push([...kept])).map(({ outcome }) => outcome)).toEqual(['duplicate', 'applied']);
    expect(await logged()).toBe(2);
  });

  it('is shut out in the middle of a push, and what came in until then is counted once', async () => {
    const device = await enrolDevice(test, company.crewLead, company.crew.personId);
    const phone = new TestPhone(device.client, test);
    const revoked = async (): Promise<{ entity: string; id: string; version: number }> => {
      await company.crewLead.post(`/v1/devices/${device.id}/revoke`, { reason: 'Fell into the pond.' });
      return { entity: 'nothing', id: device.id, version: 1 };
    };
    test.app.get(MutationKinds).add({ kind: 'test.revoke', roles: EVERYONE, body: StopTimeBody, apply: revoked });
    const [before, after] = [20, 21].map((slot) => phone.mutation('time-entry.log', hour(jobId, company.crew.personId, slot)));
    const there = await logged();
    const mutations = [before, phone.mutation('test.revoke', {}), after].map((mutation, counter) => ({ ...mutation, counter }));
    const { status, body } = await device.client.post('/v1/sync/push', { clientId: phone.clientId, mutations });
    expect([status, body.code, body.items]).toEqual([401, 'device-revoked', undefined]);
    expect(await logged()).toBe(there + 1);
    const lead = new TestPhone(company.crewLead, test);
    expect((await lead.push([before, after].map((mutation) => ({ ...mutation })))).map(({ outcome }) => outcome)).toEqual(['duplicate', 'applied']);
  });

  it('that was only away comes back with its credential and keeps its cursor and its queue', async () => {
    const device = await enrolDevice(test, company.crewLead, company.crew.personId);
    const phone = new TestPhone(device.client, test);
    await phone.pull();
    const queue = [phone.mutation('time-entry.log', hour(jobId, company.crew.personId, 5))];
    const back = new TestPhone((await signInDevice(test, device)).client, test);
    expect((await device.client.post('/v1/sync/push', { clientId: phone.clientId, mutations: queue })).body.code).toBe('session-ended');
    back.cursor = phone.cursor;
    expect((await back.push(queue)).map(({ outcome }) => outcome)).toEqual(['applied']);
    await back.pull();
    expect(back.received.map(({ kind }) => kind)).toEqual(['time-entry']);
  });
});
