import { v7 as uuidv7 } from 'uuid';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestPond, type TestPond } from '../support/test-pond.js';

describe('features', () => {
  let test: TestApp;
  let company: TestCompany;
  let pond: TestPond;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    pond = await makeTestPond(company);
  });
  afterAll(() => test.close());

  it('makes a feature, changes it, and lets the crew read it', async () => {
    const made = await company.estimator.post('/v1/features', { siteId: pond.siteId, kind: 'waterfall', name: 'Upper fall', builtYear: 2009 });
    expect(made.status).toBe(201);
    expect(made.body).toEqual({ id: made.body.id, siteId: pond.siteId, kind: 'waterfall', name: 'Upper fall', builtYear: 2009, createdAt: made.body.createdAt });
    const changed = await company.owner.patch(`/v1/features/${made.body.id}`, { builtYear: null, name: 'Old fall' }, '"1"');
    expect([changed.status, changed.headers['etag']]).toEqual([200, '"2"']);
    const read = await company.crew.get(`/v1/features/${made.body.id}`);
    expect(read.body).toMatchObject({ kind: 'waterfall', name: 'Old fall', builtYear: null });
  });

  it('answers a repeated create with the first result, and another body with 409', async () => {
    const body = { id: uuidv7(), siteId: pond.siteId, kind: 'stream', name: 'Run' };
    const answers = [await company.owner.post('/v1/features', body), await company.owner.post('/v1/features', body), await company.owner.post('/v1/features', { ...body, kind: 'basin' })];
    expect(answers.map((answer) => answer.status)).toEqual([201, 200, 409]);
    expect(answers[2]?.body.code).toBe('id-taken');
  });

  it('lists the features of one site', async () => {
    const other = await makeTestPond(company);
    const list = await company.crew.get(`/v1/features?siteId=${other.siteId}`);
    expect(list.body).toMatchObject({ items: [{ id: other.featureId }], nextCursor: null });
  });

  it('refuses unknown kinds, years that are none, and a site that is not there', async () => {
    const wrong = await company.owner.post('/v1/features', { siteId: pond.siteId, kind: 'lake', name: 'Big', builtYear: 2009.5 });
    expect(wrong.status).toBe(400);
    expect(wrong.body.errors.map((e: { pointer: string }) => e.pointer).sort()).toEqual(['/builtYear', '/kind']);
    const stranger = await makeTestPond(await makeTestCompany(test));
    for (const siteId of [uuidv7(), stranger.siteId]) {
      const answer = await company.owner.post('/v1/features', { siteId, kind: 'pond', name: 'Lost' });
      expect([answer.status, answer.body.code, answer.body.errors[0].pointer]).toEqual([422, 'no-such-reference', '/siteId']);
    }
    expect((await company.owner.get(`/v1/features/${stranger.featureId}`)).status).toBe(404);
  });

  it('lets crew roles write no feature', async () => {
    for (const client of [company.crew, company.crewLead]) {
      expect((await client.post('/v1/features', { siteId: pond.siteId, kind: 'pond', name: 'Mine' })).status).toBe(403);
      expect((await client.patch(`/v1/features/${pond.featureId}`, { name: 'Mine' }, '"1"')).status).toBe(403);
    }
  });
});
