import { v7 as uuidv7 } from 'uuid';
import type { Response } from 'supertest';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { type Client, makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestJob } from '../support/test-job.js';

describe('the crew of a job', () => {
  let test: TestApp;
  let company: TestCompany;
  let path: string;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
  });
  beforeEach(async () => {
    path = `/v1/jobs/${await makeTestJob(test, company)}/crew`;
  });
  afterAll(() => test.close());

  const put = async (client: Client, personIds: unknown, headers: Record<string, string> = {}): Promise<Response> =>
    test.request('put', path).set({ authorization: `Bearer ${client.token}`, ...headers }).send({ personIds });

  it('is empty at first, is put as a whole, and can be put again', async () => {
    const { crew, crewLead } = company;
    const empty = await crew.get(path);
    expect([empty.body.personIds, empty.headers['etag']]).toEqual([[], '"0"']);
    const both = await put(crewLead, [crew.personId, crewLead.personId]);
    expect([both.status, both.body.personIds.toSorted()]).toEqual([200, [crew.personId, crewLead.personId].toSorted()]);
    const again = await put(crewLead, [crewLead.personId, crew.personId]);
    expect([again.body, again.headers['etag']]).toEqual([both.body, both.headers['etag']]);
    const one = await put(crewLead, [crewLead.personId]);
    expect(one.body.personIds).toEqual([crewLead.personId]);
    expect((await crew.get(path)).body).toEqual(one.body);
    expect((await put(crewLead, [])).body.personIds).toEqual([]);
  });

  it('is not overwritten by one who saw another crew and says so', async () => {
    const { crew, crewLead } = company;
    const seen = (await put(crewLead, [crew.personId])).headers['etag'] ?? '';
    const joined = await put(crewLead, [crew.personId, crewLead.personId], { 'if-match': seen });
    expect(joined.status).toBe(200);
    const stale = await put(crewLead, [], { 'if-match': seen });
    expect([stale.status, stale.body.code, stale.headers['etag']]).toEqual([412, 'stale-version', joined.headers['etag']]);
    expect((await put(crewLead, [], { 'if-match': '*' })).status).toBe(412);
    expect((await crew.get(path)).body).toEqual(joined.body);
  });

  it('takes nobody who is not there or of another company, and no word of crew', async () => {
    const stranger = await makeTestCompany(test);
    for (const id of [uuidv7(), stranger.crew.personId]) {
      const answer = await put(company.owner, [company.crew.personId, id]);
      expect([answer.status, answer.body.errors[0].pointer]).toEqual([422, '/personIds/1']);
    }
    expect((await put(company.owner, 'everybody')).body.errors[0].pointer).toBe('/personIds');
    expect((await put(company.crew, [])).status).toBe(403);
    expect((await put(stranger.owner, [])).status).toBe(404);
    expect((await stranger.owner.get(path)).status).toBe(404);
    expect((await company.crew.get(path)).body.personIds).toEqual([]);
  });

  it('ends as one of the two when two leads put it at once', async () => {
    const { crew, crewLead, owner, estimator } = company;
    await Promise.all([put(owner, [crew.personId]), put(crewLead, [estimator.personId])]);
    const { body } = await crew.get(path);
    expect([[crew.personId], [estimator.personId]]).toContainEqual(body.personIds);
  });
});
