import { startTestApp, type TestApp } from '../support/test-app.js';
import { type Client, makeTestCompany, type TestCompany } from '../support/test-company.js';
import { enrolDevice, signInDevice } from '../support/test-device.js';

describe('devices', () => {
  let test: TestApp;
  let company: TestCompany;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
  });
  afterAll(() => test.close());
  afterEach(() => test.setClock(null));

  const refresh = (refreshToken: string) => test.request('post', '/v1/sessions/refresh').send({ refreshToken });
  const exchange = (credential: string) => test.request('post', '/v1/sessions/device').send({ credential });
  const lastSeen = async (id: string): Promise<string | null> => (await company.owner.get(`/v1/devices/${id}`)).body.lastSeenAt as string | null;
  const hire = async (email: string): Promise<string> => (await company.owner.post('/v1/people', { name: 'Somebody', email, role: 'crew', hourlyWage: '20.00', burdenPercent: '20' })).body.id as string;

  /** Milliseconds until the client is refused, and the refusal. */
  async function untilRefused(client: Client): Promise<{ ms: number; code: string; detail: string }> {
    const began = performance.now();
    for (;;) {
      const answer = await client.get('/v1/jobs');
      const ms = performance.now() - began;
      if (answer.status === 401) {
        const { code, detail } = answer.body as { code: string; detail: string };
        return { ms, code, detail };
      }
      if (ms > 6_000) throw new Error('It was never refused.');
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  }

  it('are listed for leads, and their own for crew', async () => {
    const mine = await enrolDevice(test, company.crewLead, company.crew.personId);
    const another = await enrolDevice(test, company.owner, company.owner.personId);
    const ids = async (client: Client, query = ''): Promise<string[]> => ((await client.get(`/v1/devices${query}`)).body.items as { id: string }[]).map(({ id }) => id);
    expect(await ids(company.crewLead)).toEqual(expect.arrayContaining([mine.id, another.id]));
    expect(await ids(company.crewLead, `?personId=${company.owner.personId}`)).toEqual([another.id]);
    expect(await ids(company.crew)).toEqual([mine.id]);
    expect(await ids(company.crew, `?personId=${company.owner.personId}`)).toEqual([]);
    expect([(await company.crew.get(`/v1/devices/${mine.id}`)).status, (await company.crew.get(`/v1/devices/${another.id}`)).status]).toEqual([200, 404]);
    expect((await company.crew.post(`/v1/devices/${another.id}/revoke`)).status).toBe(404);
    expect((await company.crewLead.post(`/v1/devices/${another.id}/revoke`)).status).toBe(403);
    expect((await another.client.get('/v1/company')).status).toBe(200);
  });

  it('say when they were last seen, with one write a minute and none in the journal', async () => {
    const device = await enrolDevice(test, company.crewLead, company.crew.personId);
    expect(await lastSeen(device.id)).toBeNull();
    const start = Math.floor(Date.now() / 1000) * 1000;
    const at = (seconds: number): string => new Date(start + seconds * 1000).toISOString();
    const useAt = async (seconds: number): Promise<void> => {
      test.setClock(at(seconds));
      // A new session, since the gate asks for a known one only every three seconds.
      const { client } = await signInDevice(test, device);
      for (let i = 0; i < 3; i++) expect((await client.get('/v1/jobs')).status).toBe(200);
    };
    await useAt(1);
    expect(await lastSeen(device.id)).toBe(at(1));
    await useAt(60);
    expect(await lastSeen(device.id)).toBe(at(1));
    await useAt(61);
    expect(await lastSeen(device.id)).toBe(at(61));
    const journal = await test.sql("SELECT operation FROM history WHERE entity = 'device' AND entity_id = $1", [device.id]);
    expect(journal).toEqual([{ operation: 'insert' }]);
  });

  it('are shut out at once in the process that revokes them, whatever they hold', async () => {
    const device = await enrolDevice(test, company.crewLead, company.crew.personId);
    expect((await device.client.get('/v1/jobs')).status).toBe(200);
    const revoked = await company.crewLead.post(`/v1/devices/${device.id}/revoke`, { reason: 'Lost at the quarry.' });
    expect([revoked.status, revoked.body]).toEqual([200, expect.objectContaining({ revokedAt: expect.any(String), revokedBecause: 'Lost at the quarry.' })]);
    const { ms, code, detail } = await untilRefused(device.client);
    expect([ms < 1_000, code]).toEqual([true, 'device-revoked']);
    expect(detail).toMatch(/handed in by another way/);
    for (const answer of [await refresh(device.refreshToken), await exchange(device.credential), await device.client.post('/v1/time-entries', {})]) {
      expect([answer.status, answer.body.code, answer.headers['www-authenticate']]).toEqual([401, 'device-revoked', 'Bearer realm="rillbook"']);
    }
    expect((await company.crew.get('/v1/jobs')).status).toBe(200);
  });

  it('are shut out within seconds by another process', async () => {
    const device = await enrolDevice(test, company.crewLead, company.crew.personId);
    expect((await device.client.get('/v1/jobs')).status).toBe(200);
    await test.sql("UPDATE device SET revoked_at = now(), revoked_because = 'lost' WHERE id = $1", [device.id]);
    const { ms, code } = await untilRefused(device.client);
    expect([ms < 5_000, code]).toEqual([true, 'device-revoked']);
  });

  it('stay shut out: revoking again changes nothing', async () => {
    const device = await enrolDevice(test, company.crewLead, company.crew.personId);
    const first = await company.crewLead.post(`/v1/devices/${device.id}/revoke`, { reason: 'Lost.' });
    const again = await company.owner.post(`/v1/devices/${device.id}/revoke`, { reason: 'Stolen.' });
    expect([again.status, again.body, again.headers['etag']]).toEqual([200, first.body, first.headers['etag']]);
  });

  it('of a dismissed person are shut out, and stay so when the person comes back', async () => {
    const personId = await hire('season@fernhollow.example');
    const device = await enrolDevice(test, company.crewLead, personId);
    expect((await device.client.get('/v1/jobs')).status).toBe(200);
    await company.owner.patch(`/v1/people/${personId}`, { active: false });
    const { ms, code } = await untilRefused(device.client);
    expect([ms < 5_000, code]).toEqual([true, 'device-revoked']);
    expect((await exchange(device.credential)).body.code).toBe('device-revoked');
    await company.owner.patch(`/v1/people/${personId}`, { active: true });
    expect((await exchange(device.credential)).body.code).toBe('device-revoked');
    expect((await company.owner.get(`/v1/devices/${device.id}`)).body.revokedBecause).toBe('the person was made inactive');
    const fresh = await enrolDevice(test, company.crewLead, personId);
    expect((await fresh.client.get('/v1/jobs')).status).toBe(200);
  });

  it('can not use a code that a lost phone made', async () => {
    const lost = await enrolDevice(test, company.owner, company.crewLead.personId);
    const { body } = await lost.client.post('/v1/device-enrolments', { personId: company.crew.personId });
    await company.owner.post(`/v1/devices/${lost.id}/revoke`);
    await expect(test.request('post', '/v1/devices').send({ code: body.code as string, name: 'Phone', secret: Buffer.from(Array.from({ length: 32 }, (_, i) => i * 7)).toString('base64url') })).resolves.toMatchObject({ status: 401 });
  });

  it('have one session: signing in again ends the one before', async () => {
    const before = await enrolDevice(test, company.crewLead, company.crew.personId);
    const after = await signInDevice(test, before);
    expect((await after.client.get('/v1/jobs')).status).toBe(200);
    expect((await untilRefused(before.client)).code).toBe('session-ended');
    expect((await refresh(before.refreshToken)).body.code).toBe('session-ended');
  });

  it('come back with their credential after their refresh token expired', async () => {
    const device = await enrolDevice(test, company.crewLead, company.crew.personId);
    test.setClock(new Date(Date.now() + 70 * 86_400_000).toISOString());
    expect((await refresh(device.refreshToken)).body.code).toBe('session-ended');
    const back = await signInDevice(test, device);
    expect((await back.client.get('/v1/jobs')).status).toBe(200);
  });

  it('let no session through that was opened while the device was being revoked', async () => {
    for (let round = 0; round < 5; round++) {
      const device = await enrolDevice(test, company.crewLead, company.crew.personId);
      const [, , ...sessions] = await Promise.all([company.crewLead.post(`/v1/devices/${device.id}/revoke`), refresh(device.refreshToken), exchange(device.credential), exchange(device.credential)]);
      expect(sessions.filter(({ status }) => status !== 201 && status !== 401)).toEqual([]);
      const open = await test.sql('SELECT id FROM sign_in_session WHERE device_id = $1 AND revoked_at IS NULL', [device.id]);
      expect(open).toEqual([]);
    }
  });

  it('end their calendar feeds with themselves, and no feed that was made elsewhere', async () => {
    const device = await enrolDevice(test, company.crewLead, company.crew.personId);
    const feed = async (client: Client, name: string): Promise<{ id: string; path: string; deviceId: string | null }> => (await client.post('/v1/calendar-feeds', { name })).body;
    const onPhone = await feed(device.client, 'Phone');
    const elsewhere = await feed(company.crew, 'Kitchen tablet');
    expect([onPhone.deviceId, elsewhere.deviceId]).toEqual([device.id, null]);
    const status = async (path: string): Promise<number> => (await test.request('get', path)).status;
    expect([await status(onPhone.path), await status(elsewhere.path)]).toEqual([200, 200]);
    const revoked = await company.crewLead.post(`/v1/devices/${device.id}/revoke`, { reason: 'Lost.' });
    expect([await status(onPhone.path), await status(elsewhere.path)]).toEqual([404, 200]);
    const listed = ((await company.crew.get('/v1/calendar-feeds')).body.items as { id: string; deviceId: string | null; revokedAt: string | null }[]).filter(({ id }) => [onPhone.id, elsewhere.id].includes(id));
    expect(listed.map(({ id, deviceId, revokedAt }) => [id, deviceId, revokedAt !== null])).toEqual([[elsewhere.id, null, false], [onPhone.id, revoked.body.id, true]]);
  });

  it('end the feeds of a dismissed person that were made on them, and these stay ended when the person comes back', async () => {
    const personId = await hire('feeds@fernhollow.example');
    const device = await enrolDevice(test, company.crewLead, personId);
    const { body } = await device.client.post('/v1/calendar-feeds', { name: 'Phone' });
    await company.owner.patch(`/v1/people/${personId}`, { active: false });
    await company.owner.patch(`/v1/people/${personId}`, { active: true });
    expect((await test.request('get', body.path as string)).status).toBe(404);
  });

  it('leave no feed behind that was made while they were being revoked', async () => {
    for (let round = 0; round < 5; round++) {
      const device = await enrolDevice(test, company.crewLead, company.crew.personId);
      const [made, , other] = await Promise.all([device.client.post('/v1/calendar-feeds', { name: 'A' }), company.crewLead.post(`/v1/devices/${device.id}/revoke`), device.client.post('/v1/calendar-feeds', { name: 'B' })]);
      expect([201, 401]).toEqual(expect.arrayContaining([made.status, other.status]));
      expect(await test.sql('SELECT id FROM calendar_feed WHERE device_id = $1 AND revoked_at IS NULL', [device.id])).toEqual([]);
    }
  });

  it('are renamed by their person and by whoever may revoke them, also while they are at work', async () => {
    const device = await enrolDevice(test, company.crewLead, company.crew.personId);
    const path = `/v1/devices/${device.id}`;
    const { headers } = await company.crew.get(path);
    expect((await device.client.get('/v1/jobs')).status).toBe(200);
    // It was seen since, which the tag tells and If-Match does not mind.
    const seen = await company.crew.get(path).set('if-none-match', headers['etag'] ?? '');
    expect([seen.status, seen.body.lastSeenAt]).toEqual([200, expect.any(String)]);
    const renamed = await company.crew.patch(path, { name: 'Ana\u2019s phone \u{1F438}' }, headers['etag'] ?? '');
    expect([renamed.status, renamed.body.name]).toEqual([200, 'Ana\u2019s phone \u{1F438}']);
    expect((await company.crewLead.patch(path, { name: 'Other' }, headers['etag'] ?? '')).status).toBe(412);
    expect((await company.crewLead.patch(path, { name: 'Spare phone' })).body.name).toBe('Spare phone');
    for (const [body, status] of [[{ name: '' }, 400], [{ name: null }, 400], [{ name: 'x'.repeat(101) }, 400], [{ name: 'a\u0000b' }, 400], [{ personId: company.owner.personId }, 400], [{ revokedAt: '2027-05-01T00:00:00Z' }, 400]] as const) expect((await company.crew.patch(path, body)).status).toBe(status);
    expect((await company.crew.patch(path, { name: 'x' }, '*')).status).toBe(412);
  });

  it('are not renamed by crew who may not see them, nor by a lead above whom they are', async () => {
    const owners = await enrolDevice(test, company.owner, company.owner.personId);
    const path = `/v1/devices/${owners.id}`;
    expect((await company.crew.patch(path, { name: 'Mine' }, '"1"')).status).toBe(404);
    expect((await company.crewLead.patch(path, { name: 'Mine' }, '"1"')).status).toBe(403);
    const stranger = await makeTestCompany(test);
    expect((await stranger.owner.patch(path, { name: 'Mine' }, '"1"')).status).toBe(404);
    expect((await company.owner.get(path)).body.name).toBe('Yellow phone');
  });
});
