import ICAL from 'ical.js';
import { v7 as uuidv7 } from 'uuid';
import { loggedPath } from '../../src/platform/http/logged-path.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { type Client, makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestJob } from '../support/test-job.js';

describe('the calendar feed', () => {
  let test: TestApp;
  let company: TestCompany;
  let jobId: string;

  beforeAll(async () => {
    test = await startTestApp();
    test.setClock('2027-05-01T12:00:00Z');
  });
  beforeEach(async () => {
    company = await makeTestCompany(test);
    jobId = await makeTestJob(test, company, { title: 'Bring the mill pond back, slowly; with care' });
  });
  afterAll(() => test.close());

  const subscribe = async (client: Client): Promise<{ id: string; path: string }> => (await client.post('/v1/calendar-feeds', { name: 'Kitchen tablet' })).body;
  const plan = async (changes: object = {}): Promise<string> => {
    const body = { jobId, day: '2027-05-11', startTime: '07:30', lengthMinutes: 480, personIds: [company.crew.personId], bring: ['Mud pump'], note: 'Drain first; then look.\nFrogs, too.', ...changes };
    return (await company.owner.post('/v1/visits', body)).body.id;
  };
  /** Read by a parser that did not write it. */
  const events = (text: string): ICAL.Event[] => new ICAL.Component(ICAL.parse(text) as unknown[]).getAllSubcomponents('vevent').map((event) => new ICAL.Event(event));
  const read = async (path: string): Promise<ICAL.Event[]> => events((await test.request('get', path)).text);

  it('shows a person\'s visits to whoever has its address, without a token and without a price', async () => {
    const id = await plan();
    await plan({ personIds: [company.crewLead.personId] });
    const { path } = await subscribe(company.crew);
    const answer = await test.request('get', path);
    expect([answer.status, answer.headers['content-type'], answer.headers['cache-control']]).toEqual([200, 'text/calendar; charset=utf-8', 'private, no-cache']);
    const [event, ...others] = events(answer.text);
    expect(others).toEqual([]);
    expect([event?.uid, event?.sequence, event?.summary]).toEqual([id, 0, expect.stringMatching(/^Bring the mill pond back, slowly; with care \(J-\d+\)$/)]);
    expect([event?.startDate.toJSDate().toISOString(), event?.endDate.toJSDate().toISOString()]).toEqual(['2027-05-11T11:30:00.000Z', '2027-05-11T19:30:00.000Z']);
    expect(event?.description).toBe('Starts 07:30 by the clocks of the site (America/Detroit).\n\nDrain first; then look.\nFrogs, too.\n\nBring: Mud pump');
    expect(event?.component.getFirstPropertyValue('status')).toBe('CONFIRMED');
    expect(answer.text).not.toMatch(/5613|1394|24\.00/);
  });

  it('shows the place, how to get in and what can hurt somebody there', async () => {
    const customer = (await company.owner.post('/v1/customers', { name: 'Marta Ellingsworth' })).body.id;
    const site = await company.owner.post('/v1/sites', { customerId: customer, address: '4 Osier Court\nAlder Falls', accessNotes: 'Side gate', hazards: 'Buried cable' });
    await test.sql('UPDATE job SET site_id = $2 WHERE id = $1', [jobId, site.body.id]);
    await plan({ note: null, bring: [] });
    const [event] = await read((await subscribe(company.crew)).path);
    expect(event?.location).toBe('4 Osier Court\nAlder Falls');
    expect(event?.description).toBe('Starts 07:30 by the clocks of the site (America/Detroit).\n\nAccess: Side gate\n\nHazards: Buried cable');
  });

  it('stamps an event anew when its place is told differently, since programs go by the stamp', async () => {
    const customer = (await company.owner.post('/v1/customers', { name: 'Marta Ellingsworth' })).body.id;
    const site = (await company.owner.post('/v1/sites', { customerId: customer, address: '4 Osier Court' })).body.id as string;
    const id = await plan();
    const { path } = await subscribe(company.crew);
    const stamp = async (): Promise<string> => {
      const [event] = await read(path);
      expect(event?.component.getFirstPropertyValue('dtstamp')?.toString()).toBe(event?.component.getFirstPropertyValue('last-modified')?.toString());
      expect(event?.sequence).toBe(0);
      return event?.component.getFirstPropertyValue('dtstamp')?.toString() ?? '';
    };
    /** As if all that happened so far had happened on that day. */
    const age = async (day: string): Promise<void> => {
      await test.sql('UPDATE visit SET changed_at = $2 WHERE id = $1', [id, day]);
      await test.sql('UPDATE history SET occurred_at = $2 WHERE entity_id IN ($1, $3)', [jobId, day, site]);
    };
    await age('2020-01-01');
    expect(await stamp()).toBe('2020-01-01T00:00:00Z');
    await test.sql('UPDATE job SET site_id = $2 WHERE id = $1', [jobId, site]);
    expect(await stamp()).not.toMatch(/^2020/);
    await age('2020-01-02');
    await company.owner.patch(`/v1/sites/${site}`, { position: { latitude: 42.28, longitude: -84.41 } });
    expect(await stamp()).toBe('2020-01-02T00:00:00Z');
    await company.owner.patch(`/v1/sites/${site}`, { hazards: 'Buried cable' });
    expect(await stamp()).not.toMatch(/^2020/);
  });

  it('changes the same event when the visit changes, and shows it as cancelled when it is off', async () => {
    const id = await plan();
    const { path } = await subscribe(company.crew);
    const seen = async (): Promise<unknown[]> => (await read(path)).map((event) => [event.uid, event.sequence, event.startDate.toJSDate().toISOString().slice(11, 16), event.component.getFirstPropertyValue('status')]);
    await company.owner.patch(`/v1/visits/${id}`, { startTime: '09:00' });
    expect(await seen()).toEqual([[id, 1, '13:00', 'CONFIRMED']]);
    await company.owner.post(`/v1/visits/${id}/cancel`, { reason: 'Rain' });
    expect(await seen()).toEqual([[id, 2, '13:00', 'CANCELLED']]);
    await company.owner.post(`/v1/visits/${id}/restore`);
    expect(await seen()).toEqual([[id, 3, '13:00', 'CONFIRMED']]);
    await company.owner.patch(`/v1/visits/${id}`, { personIds: [company.crewLead.personId] });
    expect(await seen()).toEqual([[id, 4, '13:00', 'CANCELLED']]);
  });

  it('tells somebody who was taken off a visit nothing more of it', async () => {
    const id = await plan({ note: 'The dog is at home', bring: ['Rake'] });
    const { path } = await subscribe(company.crew);
    const customer = (await company.owner.post('/v1/customers', { name: 'Marta Ellingsworth' })).body.id;
    const siteId = (await company.owner.post('/v1/sites', { customerId: customer, address: '4 Osier Court', accessNotes: 'Gate code 1111' })).body.id as string;
    await test.sql('UPDATE job SET site_id = $2 WHERE id = $1', [jobId, siteId]);
    expect((await test.request('get', path)).text).toContain('Gate code 1111');
    await company.owner.patch(`/v1/visits/${id}`, { personIds: [company.crewLead.personId] });
    await company.owner.patch(`/v1/sites/${siteId}`, { accessNotes: 'Gate code 2222' });
    const [event] = await read(path);
    expect([event?.uid, event?.location, event?.description]).toEqual([id, null, expect.stringMatching(/^Starts \S+ by the clocks of the site \(\S+\)\.$/)]);
    await company.owner.patch(`/v1/visits/${id}`, { personIds: [company.crew.personId] });
    expect((await test.request('get', path)).text).toContain('Gate code 2222');
  });

  it('is the same bytes while nothing changed, and answers 304', async () => {
    const id = await plan();
    const { path } = await subscribe(company.crew);
    const first = await test.request('get', path);
    const changed = (await company.owner.get(`/v1/visits/${id}`)).body.changedAt as string;
    expect(new Date(first.headers['last-modified'] ?? '').getTime()).toBe(Math.floor(Date.parse(changed) / 1000) * 1000);
    const etag = first.headers['etag'] ?? '';
    expect((await test.request('get', path)).text).toBe(first.text);
    expect((await test.request('get', path).set('if-none-match', etag)).status).toBe(304);
    await company.owner.patch(`/v1/visits/${id}`, { note: 'Ü' });
    expect((await test.request('get', path).set('if-none-match', etag)).status).toBe(200);
  });

  it('ends every line with CRLF, folds at 75 octets and keeps every letter', async () => {
    const note = `${'Größe 水 '.repeat(60)}end`;
    await plan({ note });
    const { text } = await test.request('get', (await subscribe(company.crew)).path);
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    expect(Math.max(...text.split('\r\n').map((line) => Buffer.byteLength(line)))).toBeLessThanOrEqual(75);
    expect(events(text)[0]?.description).toContain(note);
    expect(text).toContain('VERSION:2.0\r\n');
    for (const name of ['UID', 'DTSTAMP', 'LAST-MODIFIED', 'CREATED']) expect(text).toMatch(new RegExp(`^${name}:\\S`, 'm'));
  });

  it('is an empty calendar for somebody without visits', async () => {
    const answer = await test.request('get', (await subscribe(company.estimator)).path);
    expect([answer.status, events(answer.text), answer.headers['last-modified']]).toEqual([200, [], undefined]);
  });

  it('leaves out what ended more than sixty days ago', async () => {
    await plan({ day: '2027-03-01' });
    const recent = await plan({ day: '2027-03-03' });
    expect((await read((await subscribe(company.crew)).path)).map(({ uid }) => uid)).toEqual([recent]);
  });

  it('answers 404 once it is revoked, once the person left, and for a token that is none', async () => {
    const mine = await subscribe(company.crew);
    const other = await subscribe(company.crew);
    const revoked = await company.crew.post(`/v1/calendar-feeds/${mine.id}/revoke`);
    expect(revoked.body.revokedAt).toEqual(expect.any(String));
    expect((await company.crew.post(`/v1/calendar-feeds/${mine.id}/revoke`)).body).toEqual(revoked.body);
    const status = async (path: string): Promise<number> => (await test.request('get', path)).status;
    expect([await status(mine.path), await status(other.path)]).toEqual([404, 200]);
    const wrong = other.path.replace(/.\.ics$/, (end) => (end.startsWith('A') ? 'Q.ics' : 'A.ics'));
    expect([await status(wrong), await status('/v1/calendar/abc.ics'), await status(other.path.replace('.ics', ''))]).toEqual([404, 404, 404]);
    await company.owner.patch(`/v1/people/${company.crew.personId}`, { active: false });
    expect(await status(other.path)).toBe(404);
  });

  it('answers addresses that are none as the contract says, and none with what it shows others', async () => {
    const { path } = await subscribe(company.crew);
    const token = path.slice('/v1/calendar/'.length, -'.ics'.length);
    for (const file of ['.ics', '%00.ics', '%2e%2e.ics', `${token.toUpperCase()}.ics`, `${token}=.ics`, `${token}.ics.ics`, `${token}.ICS`, encodeURIComponent('水.ics')]) expect([file, (await test.request('get', `/v1/calendar/${file}`)).status]).toEqual([file, 404]);
    for (const file of [`${'A'.repeat(5_000)}.ics`, '%E0%A4%A.ics']) expect([(await test.request('get', `/v1/calendar/${file}`)).body.code]).toEqual(['malformed-request']);
    const shown = await company.owner.get(path).set('accept', 'application/json').set('origin', 'https://elsewhere.example');
    expect([shown.status, shown.headers['content-type'], shown.headers['access-control-allow-origin']]).toEqual([200, 'text/calendar; charset=utf-8', undefined]);
  });

  it('is made once by requests at the same moment, and by nobody for somebody else', async () => {
    const body = { id: uuidv7(), name: 'Phone' };
    const answers = await Promise.all(Array.from({ length: 5 }, () => company.crew.post('/v1/calendar-feeds', body)));
    expect(answers.map(({ status, body: { path } }) => `${status} ${path === null ? 'untold' : 'told'}`).sort()).toEqual([...Array<string>(4).fill('200 untold'), '201 told']);
    expect((await company.crew.post('/v1/calendar-feeds', { name: 'x', personId: company.owner.personId })).status).toBe(400);
    const stranger = await makeTestCompany(test);
    expect((await stranger.owner.post(`/v1/calendar-feeds/${body.id}/revoke`)).status).toBe(404);
    expect((await stranger.owner.get('/v1/calendar-feeds')).body.items).toEqual([]);
  });

  it('tells its address once, keeps only a digest, and is revoked by its person or the owner', async () => {
    const body = { id: uuidv7(), name: 'Phone' };
    const first = await company.crew.post('/v1/calendar-feeds', body);
    const again = await company.crew.post('/v1/calendar-feeds', body);
    expect([first.status, again.status, again.body]).toEqual([201, 200, { ...first.body, path: null }]);
    expect((await test.request('get', first.body.path)).status).toBe(200);
    expect((await company.crewLead.post('/v1/calendar-feeds', body)).body.code).toBe('id-taken');
    const secret = Buffer.from((first.body.path as string).slice('/v1/calendar/'.length, -'.ics'.length), 'base64url').subarray(32);
    const rows = await test.sql('SELECT to_jsonb(f)::text AS row FROM calendar_feed f UNION ALL SELECT to_jsonb(h)::text FROM history h');
    expect(JSON.stringify(rows)).not.toContain(secret.toString('hex'));
    expect((await company.crewLead.post(`/v1/calendar-feeds/${body.id}/revoke`)).status).toBe(404);
    expect((await company.crewLead.get('/v1/calendar-feeds')).body.items).toEqual([]);
    expect((await company.owner.get('/v1/calendar-feeds')).body.items).toHaveLength(1);
    expect((await company.owner.post(`/v1/calendar-feeds/${body.id}/revoke`)).status).toBe(200);
    expect((await test.request('get', first.body.path)).status).toBe(404);
  });

  it('keeps the address out of the log, and ids in it', async () => {
    const { id, path } = await subscribe(company.crew);
    expect(loggedPath(path)).toBe('/v1/calendar/….ics');
    const encoded = path.replaceAll(/[_-]|(?<=^\/v1\/calendar\/.{42})./g, (character) => `%${character.charCodeAt(0).toString(16)}`);
    expect(encoded).toContain('%');
    expect([(await test.request('get', encoded)).status, loggedPath(encoded)]).toEqual([200, '/v1/calendar/….ics']);
    expect(loggedPath(`/v1/visits/${id}/cancel?x=1`)).toBe(`/v1/visits/${id}/cancel`);
  });
});
