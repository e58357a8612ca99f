import { v7 as uuidv7 } from 'uuid';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { actorOf, makeTestJob } from '../support/test-job.js';
import { ChangeJobState, JobCrew, JobsService } from '../../src/features/jobs/index.js';
import { CorrectTime } from '../../src/features/time-entries/correct-time.js';
import { EVERYONE } from '../../src/platform/auth/actor.js';
import { IdField, TextField } from '../../src/platform/http/fields/index.js';
import { MutationKinds } from '../../src/platform/sync/mutation-kinds.js';
import { hour, TestPhone } from './support.js';

class Annotation {
  @IdField({ description: 'The entry.' })
  id: string;

  @TextField({ description: 'The note.', max: 100 })
  note: string;
}

class Nothing {
  @TextField({ description: 'Nothing.', max: 1, optional: true })
  nothing?: string | null;
}

describe('push', () => {
  let test: TestApp;
  let company: TestCompany;
  let jobId: string;
  let phone: TestPhone;
  let slot = 0;

  const entry = (more: object = {}): Record<string, unknown> => hour(jobId, company.crew.personId, slot++, more);
  const entriesThere = async (ids: unknown[]): Promise<number> => Number((await test.sql<{ n: string }>('SELECT count(*) AS n FROM time_entry WHERE id = ANY ($1)', [ids]))[0]?.n);

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    jobId = await makeTestJob(test, company);
    phone = new TestPhone(company.crew, test);
    const kinds = test.app.get(MutationKinds);
    const correct = test.app.get(CorrectTime, { strict: false });
    kinds.add({
      kind: 'time-entry.annotate', roles: EVERYONE, body: Annotation,
      apply: async (actor, { body, context }) => {
        const { id, version } = await correct.change(actor, body.id, context.baseRevision ?? 0, { note: body.note });
        return { entity: 'time-entry', id, version };
      },
    });
    kinds.add({ kind: 'test.fail', roles: EVERYONE, body: Nothing, apply: () => Promise.reject(new Error('a secret of ours')) });
    kinds.add({ kind: 'test.away', roles: EVERYONE, body: Nothing, apply: () => Promise.reject(Object.assign(new Error('gone'), { code: '57P01' })) });
  });
  afterAll(() => test.close());

  it('applies an hour and says which row it made', async () => {
    const body = entry();
    const mutation = phone.mutation('time-entry.log', body);
    const [item] = await phone.push([mutation]);
    expect(item).toEqual({ id: mutation.id, outcome: 'applied', entity: 'time-entry', entityId: body['id'], revision: 1, final: true });
    await company.crew.get(`/v1/time-entries/${String(body['id'])}`).expect(200);
  });

  it('answers a mutation sent again with its first outcome, applied or refused, and does nothing twice', async () => {
    const good = phone.mutation('time-entry.log', entry());
    const bad = phone.mutation('time-entry.log', entry({ costCode: 'no-such-code' }));
    await phone.push([good, bad]);
    const [again, refused] = await phone.push([good, bad]);
    expect(again).toMatchObject({ outcome: 'duplicate', first: 'applied', entityId: (good['body'] as { id: string }).id, revision: 1 });
    expect(refused).toMatchObject({ outcome: 'duplicate', first: 'rejected', problem: { errors: [{ pointer: '/body/costCode' }] } });
    expect(await entriesThere([(good['body'] as { id: string }).id])).toBe(1);
  });

  it('rejects the same mutation id with another body, and keeps the first effect', async () => {
    const first = phone.mutation('time-entry.log', entry());
    await phone.push([first]);
    const other = { ...first, body: entry() };
    const [item] = await phone.push([other]);
    expect(item).toMatchObject({ outcome: 'rejected', problem: { code: 'id-taken' } });
    expect(await entriesThere([(other.body as { id: string }).id])).toBe(0);
    expect((await phone.push([first]))[0]).toMatchObject({ outcome: 'duplicate', first: 'applied' });
  });

  it('applies a mutation once that is twice in one push, and rejects its id with another body', async () => {
    const mutation = phone.mutation('time-entry.log', entry());
    const items = await phone.push([mutation, mutation, { ...mutation, body: entry() }]);
    expect(items.map(({ outcome }) => outcome)).toEqual(['applied', 'duplicate', 'rejected']);
  });

  it('lets no bad mutation block the others: unreadable, unknown, invalid, refused', async () => {
    const fine = phone.mutation('time-entry.log', entry());
    const mutations = [
      { id: uuidv7(), counter: 'first' },
      phone.mutation('cloud.seed', {}),
      phone.mutation('time-entry.log', entry({ startedAt: 'yesterday' })),
      phone.mutation('time-entry.log', entry({ personId: company.crewLead.personId })),
      phone.mutation('time-entry.log', entry({ jobId: uuidv7() })),
      fine,
    ];
    const items = await phone.push(mutations);
    expect(items.map(({ outcome, problem, final }) => [outcome, problem?.code, final])).toEqual([
      ['rejected', 'invalid-input', true],
      ['rejected', 'unknown-kind', false],
      ['rejected', 'invalid-input', true],
      ['rejected', 'not-allowed', true],
      ['rejected', 'no-such-reference', true],
      ['applied', undefined, true],
    ]);
    expect(items[4]?.problem?.errors).toEqual([expect.objectContaining({ pointer: '/body/jobId' })]);
    expect(items[2]?.problem?.errors).toEqual([expect.objectContaining({ pointer: '/body/startedAt' })]);
  });

  it('applies what depends on another after it, whatever their order, and not when that was refused', async () => {
    const first = phone.mutation('time-entry.log', entry());
    const then = phone.mutation('time-entry.log', entry(), { dependsOn: [first.id], counter: 0 });
    const bad = phone.mutation('time-entry.log', entry({ costCode: 'no-such-code' }));
    const late = phone.mutation('time-entry.log', entry(), { dependsOn: [then.id, bad.id] });
    const items = await phone.push([then, late, bad, first]);
    expect(items.map(({ outcome, problem }) => [outcome, problem?.code])).toEqual([['applied', undefined], ['rejected', 'dependency-failed'], ['rejected', 'not-possible'], ['applied', undefined]]);
    expect((await phone.push([late]))[0]).toMatchObject({ outcome: 'duplicate', first: 'rejected' });
  });

  it('lets a mutation wait for one that has not come yet', async () => {
    const first = phone.mutation('time-entry.log', entry());
    const then = phone.mutation('time-entry.log', entry(), { dependsOn: [first.id] });
    expect((await phone.push([then]))[0]).toMatchObject({ outcome: 'rejected', final: false, problem: { code: 'dependency-missing' } });
    await phone.push([first]);
    expect((await phone.push([then]))[0]).toMatchObject({ outcome: 'applied' });
  });

  it('refuses mutations that depend on each other in a circle, and applies the rest', async () => {
    const a = phone.mutation('time-entry.log', entry());
    const b = phone.mutation('time-entry.log', entry(), { dependsOn: [a.id] });
    const rest = phone.mutation('time-entry.log', entry());
    const items = await phone.push([{ ...a, dependsOn: [b.id] }, b, rest]);
    expect(items.map(({ outcome }) => outcome)).toEqual(['rejected', 'rejected', 'applied']);
  });

  it('has one effect when the same push arrives many times at once', async () => {
    const mutations = Array.from({ length: 5 }, () => phone.mutation('time-entry.log', entry()));
    const answers = await Promise.all(Array.from({ length: 4 }, () => phone.push(mutations)));
    expect(await entriesThere(mutations.map(({ body }) => (body as { id: string }).id))).toBe(5);
    for (const [i] of mutations.entries()) {
      const outcomes = answers.map((items) => items[i]?.outcome).sort();
      expect(outcomes).toEqual(['applied', 'duplicate', 'duplicate', 'duplicate']);
    }
  });

  it('warns of a clock that is more than two minutes wrong, and takes the work all the same', async () => {
    const mutation = phone.mutation('time-entry.log', entry());
    const sentAt = new Date(Date.now() + 26 * 3_600_000).toISOString();
    const { body } = await company.crew.post('/v1/sync/push', { clientId: phone.clientId, sentAt, mutations: [mutation] }).expect(200);
    expect(body.items[0].outcome).toBe('applied');
    expect(Math.abs(body.clockSkewSeconds - 93_600)).toBeLessThanOrEqual(30);
    expect(body.warnings).toEqual([expect.stringContaining('26 hours ahead')]);
    const right = await company.crew.post('/v1/sync/push', { clientId: phone.clientId, sentAt: new Date().toISOString(), mutations: [mutation] }).expect(200);
    expect(right.body.warnings).toEqual([]);
  });

  it('keeps who pushed what from which phone, with the times of both clocks', async () => {
    const mutation = phone.mutation('time-entry.log', entry());
    await phone.push([mutation]);
    const [row] = await test.sql('SELECT client_id, pushed_by, outcome, clock_skew_seconds, recorded_at FROM sync_mutation WHERE id = $1', [mutation.id]);
    expect(row).toEqual({ client_id: phone.clientId, pushed_by: company.crew.personId, outcome: 'applied', clock_skew_seconds: 0, recorded_at: new Date(String(mutation['recordedAt'])) });
  });

  it('refuses a push without mutations, with more than 500, or with one that has no id', async () => {
    for (const mutations of [[], Array.from({ length: 501 }, () => ({ id: uuidv7() })), [{ counter: 1 }], 'none']) {
      await company.crew.post('/v1/sync/push', { clientId: phone.clientId, mutations }).expect(400);
    }
  });

  it('names a row of another company no more than one that is not there', async () => {
    const stranger = await makeTestCompany(test);
    const theirs = new TestPhone(stranger.crew, test);
    const answers = await theirs.push([jobId, uuidv7()].map((id) => theirs.mutation('time-entry.log', hour(id, stranger.crew.personId, slot++))));
    expect(answers.map(({ outcome, problem }) => [outcome, problem?.code])).toEqual([['rejected', 'no-such-reference'], ['rejected', 'no-such-reference']]);
  });

  it('shows in a conflict how the row stands, also when the mutation comes again', async () => {
    await test.app.get(JobCrew, { strict: false }).join(actorOf(company), jobId, [company.crew.personId]);
    const body = entry();
    await phone.push([phone.mutation('time-entry.log', body)]);
    await company.crew.patch(`/v1/time-entries/${String(body['id'])}`, { note: 'From the office' });
    const change = (baseRevision: number) => phone.mutation('time-entry.annotate', { id: body['id'], note: 'From the pond' }, { baseRevision });
    const stale = change(1);
    const [conflict] = await phone.push([stale]);
    expect(conflict).toMatchObject({ outcome: 'conflict', entity: 'time-entry', entityId: body['id'], revision: 2, current: { note: 'From the office' }, problem: { code: 'stale-version', detail: expect.stringContaining('baseRevision') }, final: true });
    expect((await phone.push([stale]))[0]).toMatchObject({ outcome: 'duplicate', first: 'conflict', revision: 2, current: { note: 'From the office' } });
    expect((await phone.push([change(2)]))[0]).toMatchObject({ outcome: 'applied', revision: 3 });
  });

  it('answers what fails on our side as not final, and applies the rest', async () => {
    const bad = phone.mutation('test.fail', {});
    const items = await phone.push([phone.mutation('time-entry.log', entry()), bad, phone.mutation('time-entry.log', entry())]);
    expect(items.map(({ outcome, problem, final }) => [outcome, problem?.code, final])).toEqual([['applied', undefined, true], ['rejected', 'unexpected', false], ['applied', undefined, true]]);
    expect(items[1]?.problem?.detail).not.toContain('a secret of ours');
    expect((await phone.push([bad]))[0]).toMatchObject({ outcome: 'rejected', final: false });
  });

  it('answers 503 when the database goes away in the middle, and says later what was done', async () => {
    const [first, away, last] = [phone.mutation('time-entry.log', entry()), phone.mutation('test.away', {}), phone.mutation('time-entry.log', entry())];
    await company.crew.post('/v1/sync/push', { clientId: phone.clientId, mutations: [first, away, last] }).expect(503);
    expect((await phone.push([first, last])).map(({ outcome, first: before }) => [outcome, before])).toEqual([['duplicate', 'applied'], ['applied', undefined]]);
  });

  it('takes the hours of a person who was never on the crew: what happened is not lost', async () => {
    const other = await makeTestJob(test, company, { title: 'A job of others' });
    const [item] = await phone.push([phone.mutation('time-entry.log', hour(other, company.crew.personId, slot++))]);
    expect(item?.outcome).toBe('applied');
    await test.app.get(ChangeJobState, { strict: false }).finish(actorOf(company), other);
    const job = await test.app.get(JobsService, { strict: false }).find(actorOf(company), other);
    const [late] = await phone.push([phone.mutation('time-entry.log', hour(other, company.crew.personId, slot++))]);
    expect([job.state, late?.outcome]).toEqual(['finished', 'applied']);
    expect((await company.crew.get(`/v1/time-entries/${late?.entityId}`)).body.heldBecause).toEqual(['job-finished']);
  });
});
