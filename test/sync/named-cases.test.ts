import { JobCrew } from '../../src/features/jobs/index.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, PASSWORD, signIn, type TestCompany } from '../support/test-company.js';
import { actorOf, makeTestJob } from '../support/test-job.js';
import { hour, TestPhone } from './support.js';

const DAY_MS = 86_400_000;

describe('a phone', () => {
  let test: TestApp;
  let company: TestCompany;
  let jobId: string;

  beforeAll(async () => {
    test = await startTestApp();
  });
  beforeEach(async () => {
    company = await makeTestCompany(test);
    jobId = await makeTestJob(test, company);
    await test.app.get(JobCrew, { strict: false }).join(actorOf(company), jobId, [company.crew.personId, company.crewLead.personId]);
  });
  afterEach(() => test.setClock(null));
  afterAll(() => test.close());

  it('hands in 5,000 queued entries after a week away, though half of the answers are lost', async () => {
    const phone = new TestPhone(company.crewLead, test);
    const people = [company.crew, company.crewLead, company.estimator, company.owner].map(({ personId }) => personId);
    // Eight minutes each, one after the other, four people at once.
    const start = Date.UTC(2026, 4, 4);
    const bodies = Array.from({ length: 5_000 }, (_, i) => {
      const at = start + Math.floor(i / people.length) * 8 * 60_000;
      return hour(jobId, people[i % people.length] ?? '', 0, { startedAt: new Date(at).toISOString(), endedAt: new Date(at + 8 * 60_000).toISOString() });
    });
    const queue = bodies.map((body) => phone.mutation('time-entry.log', body));
    for (let from = 0; from < queue.length; from += 500) {
      const batch = queue.slice(from, from + 500);
      const items = await phone.push(batch);
      expect(items.map(({ outcome }) => outcome).filter((outcome) => outcome !== 'applied')).toEqual([]);
      // An answer that is lost: the phone sends the same again.
      if (from % 1_000 === 0) expect((await phone.push(batch)).filter(({ outcome, first }) => outcome !== 'duplicate' || first !== 'applied')).toEqual([]);
    }
    const [sum] = await test.sql("SELECT count(*)::int AS entries, sum(extract(epoch FROM ended_at - started_at))::int / 60 AS minutes FROM time_entry WHERE job_id = $1", [jobId]);
    expect(sum).toEqual({ entries: 5_000, minutes: 40_000 });
    await phone.pull(500);
    expect(phone.ids('time-entry')).toEqual(bodies.map((body) => String(body['id'])).sort());
  }, 120_000);

  it('whose refresh token expired while it was offline signs in again and hands in what it kept', async () => {
    const signedIn = await test.request('post', '/v1/sessions').send({ email: await emailOf(company.crew.personId), password: PASSWORD });
    const phone = new TestPhone(company.crew, test);
    await phone.pull();
    const queue = [phone.mutation('time-entry.log', hour(jobId, company.crew.personId, 0)), phone.mutation('time-entry.log', hour(jobId, company.crew.personId, 1))];
    const later = Date.now() + 61 * DAY_MS;
    test.setClock(new Date(later).toISOString());
    const refused = await company.crew.post('/v1/sync/push', { clientId: phone.clientId, mutations: queue });
    expect([refused.status, refused.body.code]).toEqual([401, 'not-signed-in']);
    const refresh = await test.request('post', '/v1/sessions/refresh').send({ refreshToken: signedIn.body.refreshToken as string });
    expect([refresh.status, refresh.body.code]).toEqual([401, 'session-ended']);
    const again = new TestPhone(await signIn(test, await emailOf(company.crew.personId)), test);
    expect((await again.push(queue)).map(({ outcome }) => outcome)).toEqual(['applied', 'applied']);
    // The cursor outlives the session: what was pulled before is not pulled again.
    again.cursor = phone.cursor;
    await again.pull();
    expect(again.received.map(({ kind }) => kind).sort()).toEqual(['job', 'time-entry', 'time-entry']);
  });

  it('that was away for longer than its cursor lives starts over, and loses nothing of what it kept', async () => {
    const phone = new TestPhone(company.crew, test);
    await phone.pull();
    const queue = [phone.mutation('time-entry.log', hour(jobId, company.crew.personId, 0))];
    test.setClock(new Date(Date.now() + 91 * DAY_MS).toISOString());
    const again = new TestPhone(await signIn(test, await emailOf(company.crew.personId)), test);
    const expired = await again.client.get(`/v1/sync/pull?cursor=${phone.cursor}`);
    expect([expired.status, expired.body.code]).toEqual([410, 'cursor-expired']);
    expect((await again.push(queue)).map(({ outcome }) => outcome)).toEqual(['applied']);
    await again.pull();
    expect(again.ids('time-entry')).toEqual([(queue[0]?.['body'] as { id: string }).id]);
  });

  it('logs a night shift over the end of daylight saving as nine hours, and over its beginning as seven', async () => {
    const phone = new TestPhone(company.crew, test);
    const shift = (startedAt: string, endedAt: string): Record<string, unknown> => hour(jobId, company.crew.personId, 0, { startedAt, endedAt });
    const autumn = shift('2026-10-31T22:00:00-04:00', '2026-11-01T06:00:00-05:00');
    const spring = shift('2026-03-07T22:00:00-05:00', '2026-03-08T06:00:00-04:00');
    await phone.push([phone.mutation('time-entry.log', autumn), phone.mutation('time-entry.log', spring)]);
    await phone.pull();
    const minutes = [autumn, spring].map((body) => phone.rows.get(`time-entry ${String(body['id'])}`)?.value['paidMinutes']);
    expect(minutes).toEqual(['540', '420']);
  });

  it('may log both hours that the clock calls half past one, and neither of them twice', async () => {
    const phone = new TestPhone(company.crew, test);
    const half = (offset: string): object => hour(jobId, company.crew.personId, 0, { startedAt: `2026-11-01T01:30:00${offset}`, endedAt: `2026-11-01T01:59:00${offset}` });
    const items = await phone.push([phone.mutation('time-entry.log', half('-04:00')), phone.mutation('time-entry.log', half('-05:00')), phone.mutation('time-entry.log', half('-05:00'))]);
    expect(items.map(({ outcome, problem }) => problem?.code ?? outcome)).toEqual(['applied', 'applied', 'time-overlap']);
  });

  async function emailOf(personId: string): Promise<string> {
    const [row] = await test.sql<{ email: string }>('SELECT email FROM person WHERE id = $1', [personId]);
    return row?.email ?? '';
  }
});
