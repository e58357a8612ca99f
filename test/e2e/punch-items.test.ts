import { v7 as uuidv7 } from 'uuid';
import type { Actor } from '../../src/platform/auth/actor.js';
import { MutationKinds } from '../../src/platform/sync/mutation-kinds.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestJob } from '../support/test-job.js';

const CONTEXT = { mutationId: uuidv7(), recordedAt: new Date(), receivedAt: new Date(), clockSkewSeconds: 0 };

describe('punch-list items', () => {
  let test: TestApp;
  let company: TestCompany;
  let jobId: string;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
  });
  beforeEach(async () => {
    jobId = await makeTestJob(test, company);
  });
  afterAll(() => test.close());

  const add = async (changes: object = {}) => (await company.crew.post('/v1/punch-items', { id: uuidv7(), jobId, description: 'Reset two stones', place: 'South bank', ...changes })).body as { id: string };

  it('are added open, and say who marked them as done, and when', async () => {
    const item = await add();
    expect(item).toMatchObject({ jobId, description: 'Reset two stones', state: 'open', recordedBy: company.crew.personId, doneAt: null, doneBy: null });
    const done = await company.crewLead.patch(`/v1/punch-items/${item.id}`, { state: 'done' });
    expect(done.body).toMatchObject({ state: 'done', doneAt: expect.any(String), doneBy: company.crewLead.personId });
    const worded = await company.crew.patch(`/v1/punch-items/${item.id}`, { description: 'Reset three stones' });
    expect(worded.body).toMatchObject({ description: 'Reset three stones', doneAt: done.body.doneAt, doneBy: company.crewLead.personId });
    const reopened = await company.crew.patch(`/v1/punch-items/${item.id}`, { state: 'open' });
    expect(reopened.body).toMatchObject({ state: 'open', doneAt: null, doneBy: null });
  });

  it('refuse a change of a stale version, and keep to their job', async () => {
    const item = await add();
    await company.crew.patch(`/v1/punch-items/${item.id}`, { place: null }, '"1"');
    const stale = await company.crewLead.patch(`/v1/punch-items/${item.id}`, { state: 'done' }, '"1"');
    expect([stale.status, stale.body.code]).toEqual([412, 'stale-version']);
    const moved = await company.owner.patch(`/v1/punch-items/${item.id}`, { jobId: await makeTestJob(test, company) });
    expect([moved.status, moved.body.errors[0].pointer]).toEqual([400, '/jobId']);
  });

  it('are listed by job and state', async () => {
    const [open, done] = [await add(), await add({ state: 'done' })];
    const ids = async (query: string) => ((await company.crew.get(`/v1/punch-items?jobId=${jobId}${query}`)).body.items as { id: string }[]).map(({ id }) => id);
    expect([await ids('&state=open'), await ids('&state=done'), await ids('')]).toEqual([[open.id], [done.id], [done.id, open.id]]);
  });

  it('are pushed by phones with the revision that the change was made on', async () => {
    const actor: Actor = { companyId: company.id, personId: company.crew.personId, role: 'crew', sessionId: null };
    const kinds = test.app.get(MutationKinds, { strict: false });
    const push = async (kind: string, body: object, baseRevision: number | null) => kinds.find(kind)?.apply(actor, { body, context: { ...CONTEXT, baseRevision } });
    const body = { id: uuidv7(), jobId, description: 'Reset two stones' };
    expect(await push('punch-item.add', body, null)).toEqual({ entity: 'punch-item', id: body.id, version: 1 });
    expect(await push('punch-item.change', { id: body.id, state: 'done' }, 1)).toEqual({ entity: 'punch-item', id: body.id, version: 2 });
    await expect(push('punch-item.change', { id: body.id, state: 'open' }, 1)).rejects.toMatchObject({ code: 'stale-version' });
    await expect(push('punch-item.change', { id: body.id, state: 'open' }, null)).rejects.toMatchObject({ code: 'version-required' });
  });
});
