import { get } from 'node:http';
import { acceptQuote } from '../support/accepted-work.js';
import { statementsDuring } from '../support/count-statements.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestJob } from '../support/test-job.js';
import { makeTestPond, type TestPond } from '../support/test-pond.js';
import { make, usd } from '../support/test-quote.js';

const DAY = '2027-05-03';

describe('the day sheet', () => {
  let test: TestApp;
  let company: TestCompany;
  let pond: TestPond;
  let jobId: string;

  beforeAll(async () => {
    test = await startTestApp();
  });
  beforeEach(async () => {
    company = await makeTestCompany(test);
    pond = await makeTestPond(company);
    await company.owner.patch(`/v1/sites/${pond.siteId}`, { accessNotes: 'Gate 36 in wide', hazards: 'Buried cable along the fence', position: { latitude: 42.2847, longitude: -84.4191 } });
    jobId = await jobAtPond();
  });
  afterAll(() => test.close());

  const jobAtPond = async (): Promise<string> => atPond(await makeTestJob(test, company));
  const atPond = async (id: string): Promise<string> => {
    await test.sql('UPDATE job SET site_id = $2, feature_id = $3 WHERE id = $1', [id, pond.siteId, pond.featureId]);
    return id;
  };
  const enter = async (path: string, body: object): Promise<{ id: string }> => {
    const answer = await company.owner.post(path, body);
    if (answer.status !== 201) throw new Error(`POST ${path}: ${answer.text}`);
    return answer.body as { id: string };
  };
  const visit = (changes: object = {}) =>
    enter('/v1/visits', { jobId, day: DAY, startTime: '07:30', lengthMinutes: 480, personIds: [company.crew.personId, company.crewLead.personId], bring: ['Mud pump', '2 in hose'], note: 'Drain first.', ...changes });
  const hours = (changes: object = {}) =>
    enter('/v1/time-entries', { jobId, personId: company.crew.personId, costCode: 'cleanout', startedAt: '2027-05-01T08:00:00-04:00', endedAt: '2027-05-01T12:20:00-04:00', unpaidBreakMinutes: 20, ...changes });
  const catalog = (parts: number) =>
    Promise.all(Array.from({ length: parts }, (_, i) => make(company.estimator, '/v1/parts', { sku: `P-${i}`, name: `Flexible hose, ${i} in, by the foot`, unit: 'ft', unitCost: usd('2.10'), markupPercent: '40' })));
  const quoteOf = (partIds: readonly string[], title: string) => ({ title, parts: partIds.map((partId, i) => ({ partId, quantity: `${120 - i}.5`, costCode: 'plumbing' })) });
  const day = (query = `?date=${DAY}`) => company.crew.get(`/v1/day${query}`);

  it('holds all that a person needs for the jobs of the day', async () => {
    await enter('/v1/surveys', { featureId: pond.featureId, surveyedOn: '2027-03-01', outline: { shape: 'ellipse', length: { value: 24, unit: 'ft' }, width: { value: 16, unit: 'ft' } }, reclaimedMaterials: [{ kind: 'stone', quantity: { value: 2.5, unit: 'ton' }, note: 'Behind the shed' }] });
    const planned = await visit();
    await hours();
    await hours({ costCode: 'travel', startedAt: '2027-05-01T07:00:00-04:00', endedAt: '2027-05-01T07:30:00-04:00', unpaidBreakMinutes: 0 });
    await enter('/v1/blockers', { jobId, kind: 'utility-locate', requestedOn: '2027-04-30', clearOn: '2027-05-05' });
    const open = await enter('/v1/punch-items', { jobId, description: 'Reset two stones', place: 'South bank' });
    await enter('/v1/punch-items', { jobId, description: 'Rake the path', state: 'done' });

    const { status, body } = await day();
    expect(status).toBe(200);
    expect(body).toMatchObject({ personId: company.crew.personId, personName: 'Test crew', date: DAY, more: false });
    expect(body.cautions.map(({ topic }: { topic: string }) => topic)).toEqual(expect.arrayContaining(['Electricity', 'Digging']));
    expect(body.jobs).toEqual([
      {
        id: jobId, number: expect.stringMatching(/^J-/), title: 'Bring the mill pond back', state: 'under-way', timeZone: 'America/Detroit', featureName: 'Lower pond',
        visits: [{ id: planned.id, day: DAY, startTime: '07:30', startsAt: '2027-05-03T11:30:00.000Z', lengthMinutes: 480, bring: ['Mud pump', '2 in hose'], note: 'Drain first.' }],
        site: { address: '4 Osier Court\nAlder Falls, MI 48000', mapLink: 'geo:42.2847,-84.4191', mapQuery: '4 Osier Court, Alder Falls, MI 48000', accessNotes: 'Gate 36 in wide', hazards: 'Buried cable along the fence' },
        blockers: [expect.stringContaining('Call before you dig')],
        costCodes: [
          { costCode: 'cleanout', planned: '20.5', logged: '4', remaining: '16.5' },
          { costCode: 'edge', planned: '35.25', logged: '0', remaining: '35.25' },
          { costCode: 'travel', planned: '0', logged: '0.5', remaining: '-0.5' },
        ],
        crew: [{ id: company.crew.personId, name: 'Test crew', comes: true }, { id: company.crewLead.personId, name: 'Test crew-lead', comes: true }],
        materials: [],
        keep: [{ kind: 'stone', quantity: { value: 2.5, unit: 'ton' }, note: 'Behind the shed' }],
        punchItems: [{ id: open.id, description: 'Reset two stones', place: 'South bank' }],
      },
    ]);
  });

  it('has what is left of the quoted parts, in the order of the quote, and of the sections that were taken alone', async () => {
    const [hose, elbow, pump, lamp] = (await catalog(4)) as [string, string, string, string];
    const part = (partId: string, quantity: string, section?: string) => ({ partId, quantity, costCode: 'plumbing', ...(section === undefined ? {} : { section }) });
    jobId = (await acceptQuote(company.estimator, {
      title: 'Bring the mill pond back',
      sections: [{ key: 'loop', title: 'Circulation' }, { key: 'lights', title: 'Lights', optional: true }],
      parts: [part(elbow, '6'), part(hose, '40', 'loop'), part(hose, '20'), part(pump, '1', 'loop'), part(lamp, '8', 'lights')],
    })).jobId;
    await visit();
    const left = async () => (await day()).body.jobs[0].materials;
    expect(await left()).toEqual([
      { partId: elbow, description: 'Flexible hose, 1 in, by the foot', quantity: '6', unit: 'ft' },
      { partId: hose, description: 'Flexible hose, 0 in, by the foot', quantity: '60', unit: 'ft' },
      { partId: pump, description: 'Flexible hose, 2 in, by the foot', quantity: '1', unit: 'ft' },
    ]);
    const use = (partId: string, quantity: string) => enter('/v1/material-uses', { jobId, usedAt: '2027-05-02T14:00:00Z', partId, quantity });
    await use(elbow, '7');
    await use(hose, '20.25');
    const wrong = await use(pump, '1');
    await company.crewLead.post(`/v1/material-uses/${wrong.id}/void`, { reason: 'Other job' });
    expect((await left()).map(({ quantity }: { quantity: string }) => quantity)).toEqual(['39.75', '1']);
  });

  it('has the jobs on which the person has hours that day at the site, though nobody planned them', async () => {
    await hours({ startedAt: '2027-05-03T23:00:00-04:00', endedAt: '2027-05-04T03:00:00-04:00' });
    expect((await day()).body.jobs).toMatchObject([{ id: jobId, visits: [], crew: [] }]);
    expect((await day('?date=2027-05-04')).body.jobs).toEqual([]);
  });

  it('leaves out visits of others and cancelled ones, hours that are void, and blockers out of the way', async () => {
    await visit({ personIds: [company.crewLead.personId] });
    const off = await visit({ personIds: [company.crew.personId] });
    await company.owner.post(`/v1/visits/${off.id}/cancel`, { reason: 'Rain' });
    expect((await day()).body.jobs).toEqual([]);
    await enter('/v1/blockers', { jobId, kind: 'permit', clearOn: '2027-05-01', clearedOn: '2027-05-01' });
    const wrong = await hours({ startedAt: '2027-05-03T08:00:00-04:00', endedAt: '2027-05-03T09:00:00-04:00', unpaidBreakMinutes: 0 });
    expect((await day()).body.jobs).toMatchObject([{ blockers: [], costCodes: [{ costCode: 'cleanout', logged: '1' }, {}] }]);
    await company.owner.post(`/v1/time-entries/${wrong.id}/void`, { reason: 'Other job' });
    expect((await day()).body.jobs).toEqual([]);
  });

  it('is a crew person\'s own, and anybody\'s for whoever leads', async () => {
    const theirs = `?date=${DAY}&personId=${company.crewLead.personId}`;
    const refused = await day(theirs);
    expect([refused.status, refused.body.code, refused.body.errors[0].pointer]).toEqual([403, 'not-allowed', '/personId']);
    await visit();
    expect((await company.crewLead.get(`/v1/day?date=${DAY}&personId=${company.crew.personId}`)).body.jobs).toHaveLength(1);
    const other = await makeTestCompany(test);
    expect((await company.owner.get(`/v1/day?personId=${other.crew.personId}`)).status).toBe(404);
    expect((await day('?date=tomorrow')).status).toBe(400);
  });

  it('answers 304 while nothing changed, and anew when something did', async () => {
    await visit();
    const first = await day();
    const again = () => company.crew.get(`/v1/day?date=${DAY}`).set('if-none-match', first.headers['etag'] ?? '');
    const same = await again();
    expect([same.status, same.text]).toEqual([304, '']);
    await enter('/v1/punch-items', { jobId, description: 'Reset two stones' });
    expect((await again()).status).toBe(200);
  });

  it('of ten jobs is under 30 KB, a few of them when compressed, and one statement as for one job', async () => {
    await visit();
    const parts = await catalog(14);
    const one = await statementsDuring(test, async () => void (await day()));
    for (let i = 0; i < 9; i++) {
      jobId = await atPond((await acceptQuote(company.estimator, quoteOf(parts, `Bring pond ${i} of the old mill back`))).jobId);
      await visit({ startTime: `1${i}:00`, lengthMinutes: 30, note: 'Drain to the swale, rescue the fish first, and keep the stone of the north bank apart.' });
      await enter('/v1/blockers', { jobId, kind: 'utility-locate', clearOn: '2027-05-05' });
      for (let item = 0; item < 5; item++) await enter('/v1/punch-items', { jobId, description: `Reset stone ${item} at the skimmer and rake the gravel`, place: 'South bank' });
    }
    let answer: Awaited<ReturnType<typeof day>> | undefined;
    const ten = await statementsDuring(test, async () => void (answer = await day()));
    expect([one.length, ten.length]).toEqual([1, 1]);
    expect(answer?.body.jobs).toHaveLength(10);
    expect(answer?.body.jobs[9].materials).toHaveLength(10);
    expect(Buffer.byteLength(answer?.text ?? '')).toBeLessThan(30_000);
    for (const [encoding, most] of [['gzip', 5_000], ['br', 5_000]] as const) {
      const raw = await fetch(`${test.url}/v1/day?date=${DAY}`, { headers: { authorization: `Bearer ${company.crew.token}`, 'accept-encoding': encoding } });
      expect([raw.headers.get('content-encoding'), raw.headers.get('vary')]).toEqual([encoding, expect.stringContaining('accept-encoding')]);
      expect(await raw.json()).toEqual(answer?.body);
      expect(await sizeOnTheWire(encoding)).toBeLessThan(most);
    }
  });

  /** Bytes of the body as they travel; fetch shows only what they unpack to. */
  const sizeOnTheWire = (encoding: string): Promise<number> =>
    new Promise((resolve, reject) => {
      get(`${test.url}/v1/day?date=${DAY}`, { headers: { authorization: `Bearer ${company.crew.token}`, 'accept-encoding': encoding } }, (answer) => {
        let bytes = 0;
        answer.on('data', (chunk: Buffer) => (bytes += chunk.length)).on('end', () => resolve(bytes)).on('error', reject);
      }).on('error', reject);
    });

  it('is sent as it is to whoever takes no compression; and so are short answers, and those to what makes something, which may hold a token', async () => {
    await visit();
    const encodingOf = async (path: string, encoding: string, body?: object) => {
      const headers = { authorization: `Bearer ${company.owner.token}`, 'accept-encoding': encoding, 'content-type': 'application/json' };
      const answer = await fetch(`${test.url}${path}`, body === undefined ? { headers } : { method: 'POST', headers, body: JSON.stringify(body) });
      expect(answer.status).toBeLessThan(300);
      return answer.headers.get('content-encoding');
    };
    const ofCrew = `/v1/day?date=${DAY}&personId=${company.crew.personId}`;
    expect([await encodingOf(ofCrew, 'br'), await encodingOf(ofCrew, 'identity'), await encodingOf('/health/live', 'br')]).toEqual(['br', null, null]);
    expect(await encodingOf('/v1/customers', 'br', { name: 'Marta Ellingsworth', concerns: 'Green water. '.repeat(200) })).toBeNull();
  });

  it('takes no compressed request, which could unpack to more than there is room for', async () => {
    const answer = await fetch(`${test.url}/v1/sessions`, { method: 'POST', headers: { 'content-type': 'application/json', 'content-encoding': 'gzip' }, body: new Uint8Array([31, 139, 8, 0]) });
    expect(answer.status).toBe(415);
  });
});
