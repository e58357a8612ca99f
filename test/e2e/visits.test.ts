import { v7 as uuidv7 } from 'uuid';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestJob } from '../support/test-job.js';

describe('reading visits', () => {
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

  const plan = async (changes: object = {}): Promise<string> => {
    const answer = await company.owner.post('/v1/visits', { jobId, day: '2027-05-11', startTime: '07:30', lengthMinutes: 60, personIds: [company.crew.personId], ...changes });
    expect([answer.status, answer.text]).toEqual([201, expect.anything()]);
    return answer.body.id as string;
  };
  const ids = async (query: string): Promise<string[]> => ((await company.crew.get(`/v1/visits?${query}`)).body.items as { id: string }[]).map(({ id }) => id);

  it('never answers 304 when what speaks against a visit has changed, and takes the same tag to change it', async () => {
    const path = `/v1/visits/${await plan()}`;
    const first = await company.owner.get(path);
    const etag = first.headers['etag'] ?? '';
    const again = () => company.owner.get(path).set('if-none-match', etag);
    expect((await again()).status).toBe(304);
    await company.crew.post('/v1/days-off', { personId: company.crew.personId, firstDay: '2027-05-11' });
    const warned = await again();
    expect([warned.status, warned.body.warnings]).toEqual([200, [expect.objectContaining({ code: 'day-off' })]]);
    // The visit itself is the one that was read, so nothing is lost by a change of it.
    expect((await company.owner.patch(path, { note: 'Bring boots.' }, etag)).status).toBe(200);
    expect((await company.owner.patch(path, { note: 'Bring waders.' }, etag)).status).toBe(412);
  });

  it('tells crew of their own days off and of nobody else\'s, in every list of warnings', async () => {
    const { crew, crewLead } = company;
    for (const { personId } of [crew, crewLead]) await company.owner.post('/v1/days-off', { personId, firstDay: '2027-05-10', lastDay: '2027-05-13' });
    const path = `/v1/visits/${await plan({ personIds: [crew.personId, crewLead.personId] })}`;
    const off = (visit: { warnings: { code: string; personId: string }[] }): string[] => visit.warnings.filter(({ code }) => code === 'day-off').map(({ personId }) => personId);
    for (const [client, expected] of [[crew, [crew.personId]], [crewLead, [crew.personId, crewLead.personId]]] as const) {
      expect(off((await client.get(path)).body)).toEqual(expected);
      expect(off((await client.get(`/v1/visits?jobId=${jobId}`)).body.items[0])).toEqual(expected);
      expect(off((await client.get('/v1/board?week=2027-W19')).body.visits[0])).toEqual(expected);
    }
  });

  it('takes the version alone in If-Match as before, and no tag that is none', async () => {
    const path = `/v1/visits/${await plan()}`;
    expect((await company.owner.patch(path, { note: 'x' }, '"1"')).status).toBe(200);
    for (const etag of ['W/"2"', '"2."', '"2.short"', '2', '*', '"-2"', `"2.${'x'.repeat(23)}"`]) expect((await company.owner.patch(path, { note: 'y' }, etag)).status).toBe(412);
  });

  it('lists those of a job, of a person and of some days, and all of it together', async () => {
    const other = await makeTestJob(test, company, { title: 'Mend the weir' });
    const a = await plan();
    const b = await plan({ jobId: other, day: '2027-05-12', personIds: [company.crewLead.personId] });
    const c = await plan({ day: '2027-05-14', personIds: [company.crew.personId, company.crewLead.personId] });
    expect(await ids('')).toEqual([c, b, a]);
    expect(await ids(`jobId=${jobId}`)).toEqual([c, a]);
    expect(await ids(`personId=${company.crewLead.personId.toUpperCase()}`)).toEqual([c, b]);
    expect(await ids('day=2027-05-12')).toEqual([b]);
    expect(await ids('firstDay=2027-05-12')).toEqual([c, b]);
    expect(await ids('lastDay=2027-05-12')).toEqual([b, a]);
    expect(await ids(`firstDay=2027-05-12&lastDay=2027-05-14&personId=${company.crewLead.personId}&jobId=${jobId}`)).toEqual([c]);
    expect(await ids('firstDay=2027-05-14&lastDay=2027-05-11')).toEqual([]);
    expect(await ids(`personId=${uuidv7()}`)).toEqual([]);
    await company.owner.patch(`/v1/visits/${c}`, { personIds: [company.crew.personId] });
    expect(await ids(`personId=${company.crewLead.personId}`)).toEqual([b]);
  });

  it('leafs through a filtered list without losing or doubling one', async () => {
    const made: string[] = [];
    for (let i = 0; i < 7; i++) made.push(await plan({ startTime: `1${i}:00`, personIds: [i % 2 === 0 ? company.crew.personId : company.crewLead.personId] }));
    const seen: string[] = [];
    let cursor: string | null = null;
    do {
      const query: string = `personId=${company.crew.personId}&limit=3${cursor === null ? '' : `&cursor=${cursor}`}`;
      const { body } = await company.crew.get(`/v1/visits?${query}`);
      seen.push(...(body.items as { id: string }[]).map(({ id }) => id));
      cursor = body.nextCursor as string | null;
    } while (cursor !== null);
    expect(seen).toEqual(made.filter((_, i) => i % 2 === 0).reverse());
  });

  it.each(['personId=me', 'firstDay=0001-01-01', 'lastDay=9999-12-31', 'day=2027-02-30', 'firstDay=2027-05-12T00:00:00Z', 'jobId=%00', 'personId=', 'day=2027-05-11&day=2027-05-12'])('refuses %s with 400', async (query) => {
    const answer = await company.crew.get(`/v1/visits?${query}`);
    expect([answer.status, answer.body.code]).toEqual([400, 'invalid-input']);
  });
});
