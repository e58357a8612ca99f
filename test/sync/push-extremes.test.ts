import { IdField } from '../../src/platform/http/fields/index.js';
import { EVERYONE } from '../../src/platform/auth/actor.js';
import { MutationKinds } from '../../src/platform/sync/mutation-kinds.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestJob } from '../support/test-job.js';
import { hour, TestPhone } from './support.js';

class Nothing {
  @IdField({ description: 'Nothing.', optional: true })
  id?: string | null;
}

describe('a push at its extremes', () => {
  let test: TestApp;
  let company: TestCompany;
  let jobId: string;
  let phone: TestPhone;
  let slot = 0;

  const entry = (more: object = {}): Record<string, unknown> => hour(jobId, company.crew.personId, slot++, more);

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    jobId = await makeTestJob(test, company);
    phone = new TestPhone(company.crew, test);
    test.app.get(MutationKinds).add({ kind: 'test.fail', roles: EVERYONE, body: Nothing, apply: () => Promise.reject(new Error('a failure of ours')) });
  });
  afterAll(() => test.close());

  it('refuses a mutation that depends on itself, and says what to do', async () => {
    const mutation = phone.mutation('time-entry.log', entry());
    const [item] = await phone.push([{ ...mutation, dependsOn: [mutation.id] }]);
    expect(item).toMatchObject({ outcome: 'rejected', final: true, problem: { errors: [{ pointer: '/dependsOn/0', detail: expect.stringContaining('itself') }] } });
  });

  it('refuses a circle as long as a push, and applies a chain as long', async () => {
    const around = Array.from({ length: 500 }, () => phone.mutation('time-entry.log', entry()));
    const circle = await phone.push(around.map((one, i) => ({ ...one, dependsOn: [around[(i + 1) % around.length]?.id] })));
    expect([...new Set(circle.map(({ problem }) => problem?.code))].sort()).toEqual(['dependency-failed', 'invalid-input']);
    const links = Array.from({ length: 100 }, () => phone.mutation('time-entry.log', entry()));
    const chain = await phone.push(links.map((one, i) => ({ ...one, counter: links.length - i, dependsOn: i === 0 ? [] : [links[i - 1]?.id] })));
    expect(chain.filter(({ outcome }) => outcome !== 'applied')).toEqual([]);
  });

  it('takes 500 mutations with a poison in the middle, all with the same counter, without the time of the phone', async () => {
    const mutations = Array.from({ length: 500 }, (_, i) => phone.mutation('time-entry.log', entry(i === 250 ? { note: 'half of a pair \ud800' } : {}), { counter: 7 }));
    mutations[251] = phone.mutation('test.fail', {}, { counter: 7 });
    const { body } = await company.crew.post('/v1/sync/push', { clientId: phone.clientId, mutations }).expect(200);
    const bad = (body.items as { outcome: string; problem?: { code: string; detail: string } }[]).flatMap(({ outcome, problem }, i) => (outcome === 'applied' ? [] : [[i, outcome, problem?.code]]));
    expect(bad).toEqual([[250, 'rejected', 'invalid-input'], [251, 'rejected', 'unexpected']]);
    expect([body.clockSkewSeconds, body.warnings]).toEqual([null, []]);
    expect(body.items[250].problem.detail).toMatch(/^\/body\/note: /);
  });

  it('takes instants to the nanosecond, as many a phone writes them, and keeps the millisecond', async () => {
    const body = { ...entry(), startedAt: '2026-03-02T08:00:00.123456789Z', endedAt: '2026-03-02T09:00:00.123456789Z' };
    const answer = await company.crew.post('/v1/sync/push', { clientId: phone.clientId, sentAt: '2026-03-02T09:00:00.000000001Z', mutations: [phone.mutation('time-entry.log', body, { recordedAt: '2026-03-02T09:00:00.5Z' })] });
    expect(answer.body.items).toMatchObject([{ outcome: 'applied' }]);
    expect((await company.crew.get(`/v1/time-entries/${answer.body.items[0].entityId}`)).body).toMatchObject({ startedAt: '2026-03-02T08:00:00.123Z', paidMinutes: '60' });
  });

  it('takes 500 hours with a megabyte and a half of notes', async () => {
    const mutations = Array.from({ length: 500 }, () => phone.mutation('time-entry.log', entry({ note: '水'.repeat(1_000) })));
    expect(Buffer.byteLength(JSON.stringify(mutations))).toBeGreaterThan(1_500_000);
    expect((await phone.push(mutations)).filter(({ outcome }) => outcome !== 'applied')).toEqual([]);
  });

  it('has one effect of 500 mutations that two connections push at once, in another order', async () => {
    const mutations = Array.from({ length: 500 }, () => phone.mutation('time-entry.log', entry()));
    const [there, back] = await Promise.all([phone.push(mutations), phone.push(mutations.toReversed())]);
    const told = there.map(({ id, outcome }) => [outcome, back.find((other) => other.id === id)?.outcome].sort().join());
    expect([...new Set(told)]).toEqual(['applied,duplicate']);
    const [row] = await test.sql<{ n: number }>('SELECT count(*)::int AS n FROM time_entry WHERE id = ANY ($1)', [mutations.map(({ body }) => (body as { id: string }).id)]);
    expect(row?.n).toBe(500);
  });

  it('tells the phone in its own words what to do about a change that can not be made', async () => {
    const { id } = entry();
    const [stop] = await phone.push([phone.mutation('time-entry.stop', { id })]);
    expect([stop?.problem?.code, stop?.problem?.detail]).toEqual(['not-found', expect.stringContaining('dependsOn')]);
    const [first, second] = [entry(), entry()];
    await phone.push([first, second].map((body) => phone.mutation('time-entry.log', body)));
    const [overlap] = await phone.push([phone.mutation('time-entry.correct', { id: first['id'], endedAt: second['endedAt'] }, { baseRevision: 1 })]);
    expect([overlap?.final, overlap?.problem?.detail]).toEqual([true, expect.stringContaining('Change the start or the end, or void the other entry')]);
    await company.owner.post('/v1/time-lock', { lockedThrough: String(second['endedAt']).slice(0, 10) }).expect(200);
    const [locked] = await phone.push([phone.mutation('time-entry.void', { id: first['id'], reason: 'Entered twice' })]);
    expect([locked?.final, locked?.problem?.detail]).toEqual([true, expect.stringMatching(/Ask the owner to open the day, then do it anew/)]);
    await company.owner.post('/v1/time-lock', { lockedThrough: null }).expect(200);
  });
});
