import { AttemptLimits } from '../../src/features/sessions/attempt-limits.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, PASSWORD, signIn, type TestCompany } from '../support/test-company.js';

describe('sessions', () => {
  let test: TestApp;
  let company: TestCompany;
  let ownerEmail: string;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    ownerEmail = ((await company.owner.get(`/v1/people/${company.owner.personId}`)).body as { email: string }).email;
  });
  afterAll(() => test.close());

  const post = (path: string, body: object) => test.request('post', path).send(body);
  const open = async () => (await post('/v1/sessions', { email: ownerEmail, password: PASSWORD })).body as { accessToken: string; refreshToken: string };
  const company_ = (token: string) => test.request('get', '/v1/company').set('authorization', `Bearer ${token}`);

  it('signs in with the address in any case, and says who and for which company', async () => {
    const answer = await post('/v1/sessions', { email: ownerEmail.toUpperCase(), password: PASSWORD });
    expect(answer.status).toBe(201);
    expect(answer.body).toMatchObject({ expiresIn: 600, person: { id: company.owner.personId, role: 'owner' }, company: { id: company.id, currency: 'USD', timeZone: 'America/Detroit' } });
    expect((await company_(answer.body.accessToken as string)).status).toBe(200);
  });

  it('answers alike for a wrong password and an unknown address', async () => {
    const wrong = await post('/v1/sessions', { email: ownerEmail, password: 'not the password at all' });
    const unknown = await post('/v1/sessions', { email: 'nobody@fernhollow.example', password: PASSWORD });
    expect([wrong.status, unknown.status]).toEqual([401, 401]);
    expect(wrong.body).toEqual(unknown.body);
  });

  it('rotates refresh tokens, and ends the whole family when one is used twice', async () => {
    const first = await open();
    const second = await post('/v1/sessions/refresh', { refreshToken: first.refreshToken });
    expect(second.status).toBe(200);
    expect(second.body.refreshToken).not.toBe(first.refreshToken);
    expect((await company_(second.body.accessToken as string)).status).toBe(200);
    const replay = await post('/v1/sessions/refresh', { refreshToken: first.refreshToken });
    expect([replay.status, replay.body.code]).toEqual([401, 'session-ended']);
    const heir = await post('/v1/sessions/refresh', { refreshToken: second.body.refreshToken as string });
    expect(heir.status).toBe(401);
    expect((await company_(second.body.accessToken as string)).body.code).toBe('session-ended');
  });

  it('lets one of two simultaneous refreshes win, and takes the other for reuse', async () => {
    const { refreshToken } = await open();
    const answers = await Promise.all([post('/v1/sessions/refresh', { refreshToken }), post('/v1/sessions/refresh', { refreshToken })]);
    expect(answers.map((answer) => answer.status).sort()).toEqual([200, 401]);
  });

  it('keeps only hashes of refresh tokens and passwords, and none of them in the journal', async () => {
    const { refreshToken } = await open();
    const secret = Buffer.from(refreshToken, 'base64url').subarray(32).toString('hex');
    const [hit] = await test.sql<{ n: string }>("SELECT count(*) AS n FROM refresh_token WHERE encode(secret_hash, 'hex') = $1", [secret]);
    expect(hit?.n).toBe('0');
    const [{ password_hash: hash } = { password_hash: '' }] = await test.sql<{ password_hash: string }>('SELECT password_hash FROM credential WHERE id = $1', [company.owner.personId]);
    expect(hash).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$/);
    await company.owner.post(`/v1/people/${company.crew.personId}/password`, { password: 'another sentence about herons' });
    const journal = await test.sql("SELECT before::text FROM history WHERE entity IN ('credential', 'refresh_token') AND (before ? 'password_hash' OR before ? 'secret_hash')");
    expect(journal).toEqual([]);
  });

  it('signs out at once', async () => {
    const { accessToken } = await open();
    const out = await test.request('delete', '/v1/sessions/current').set('authorization', `Bearer ${accessToken}`);
    expect(out.status).toBe(204);
    expect((await company_(accessToken)).status).toBe(401);
  });

  it('refuses a token that expired, was altered, or claims another algorithm', async () => {
    const { accessToken } = await open();
    const [head = '', payload = '', signature = ''] = accessToken.split('.');
    const claims = JSON.parse(Buffer.from(payload, 'base64url').toString()) as Record<string, unknown>;
    const other = Buffer.from(JSON.stringify({ ...claims, sub: company.crew.personId })).toString('base64url');
    const none = Buffer.from(JSON.stringify({ alg: 'none', typ: 'at+jwt' })).toString('base64url');
    for (const token of [`${head}.${other}.${signature}`, `${none}.${payload}.`, `${none}.${payload}.${signature}`, 'x'.repeat(40)]) {
      expect((await company_(token)).status).toBe(401);
    }
    test.setClock(new Date(Date.now() + 601_000).toISOString());
    expect((await company_(accessToken)).status).toBe(401);
    test.setClock(null);
    expect((await company_(accessToken)).status).toBe(200);
  });

  it('shuts a person out within seconds of being made inactive', async () => {
    const person = await company.owner.post('/v1/people', { name: 'Short Stay', email: 'short@fernhollow.example', role: 'crew', hourlyWage: '20.00', burdenPercent: '20' });
    await company.owner.post(`/v1/people/${person.body.id}/password`, { password: PASSWORD });
    const client = await signIn(test, 'short@fernhollow.example');
    expect((await client.get('/v1/company')).status).toBe(200);
    await company.owner.patch(`/v1/people/${person.body.id}`, { active: false });
    const deadline = Date.now() + 6_000;
    let status = 200;
    while (status === 200 && Date.now() < deadline) {
      await new Promise((resolve) => setTimeout(resolve, 200));
      status = (await client.get('/v1/company')).status;
    }
    expect(status).toBe(401);
    expect((await post('/v1/sessions', { email: 'short@fernhollow.example', password: PASSWORD })).status).toBe(401);
  });

  it('limits failed attempts on an account, and says when to try again', async () => {
    const statuses: number[] = [];
    let last = { status: 0, headers: {} as Record<string, string> };
    for (let i = 0; i < 10; i++) {
      last = await post('/v1/sessions', { email: 'guessed@fernhollow.example', password: `guess number ${i} of many` });
      statuses.push(last.status);
    }
    expect(statuses).toEqual([401, 401, 401, 401, 401, 401, 401, 401, 429, 429]);
    expect(Number(last.headers['retry-after'])).toBeGreaterThan(0);
  });

  it('counts nothing against an account that an address is refused for anyway', async () => {
    const limits = new AttemptLimits();
    const refused = (email: string, address: string): Promise<boolean> => limits.begin(email, address).then(() => false, () => true);
    for (const address of ['192.0.2.1', '192.0.2.2', '192.0.2.3', '192.0.2.4', '192.0.2.5', '192.0.2.6', '192.0.2.7']) {
      for (let i = 0; i < 100; i++) expect(await refused(`invented-${i}@${address}`, address)).toBe(false);
      for (let i = 0; i < 8; i++) expect(await refused(ownerEmail, address)).toBe(true);
    }
    expect(await refused(ownerEmail, '198.51.100.1')).toBe(false);
  });

  it('lets nobody who found a phone guess the present password as often as they like', async () => {
    const person = await company.owner.post('/v1/people', { name: 'Found', email: 'found@fernhollow.example', role: 'crew', hourlyWage: '20.00', burdenPercent: '20' });
    const path = `/v1/people/${person.body.id}/password`;
    await company.owner.post(path, { password: PASSWORD });
    const finder = await signIn(test, 'found@fernhollow.example');
    const guess = async (currentPassword: string) => finder.post(path, { password: 'the finder keeps it then', currentPassword });
    for (let i = 0; i < 8; i++) expect((await guess(`guess number ${i} of many`)).status).toBe(400);
    const last = await guess(PASSWORD);
    expect([last.status, last.body.code, Number(last.headers['retry-after']) > 0]).toEqual([429, 'too-many-attempts', true]);
    expect((await company.owner.post(path, { password: 'another sentence about herons' })).status).toBe(204);
  });

  it('asks which company is meant when an address and password fit two', async () => {
    const other = await makeTestCompany(test);
    const twin = { name: 'Twin', email: 'twin@fernhollow.example', role: 'crew', hourlyWage: '20.00', burdenPercent: '20' };
    for (const client of [company.owner, other.owner]) {
      const { body } = await client.post('/v1/people', twin);
      await client.post(`/v1/people/${body.id}/password`, { password: PASSWORD });
    }
    const unclear = await post('/v1/sessions', { email: twin.email, password: PASSWORD });
    expect([unclear.status, unclear.body.code, unclear.body.errors[0].pointer]).toEqual([409, 'company-choice', '/companyId']);
    const chosen = await post('/v1/sessions', { email: twin.email, password: PASSWORD, companyId: other.id });
    expect([chosen.status, chosen.body.company.id]).toEqual([201, other.id]);
  });

  it('takes passwords of 15 characters of any script and no others', async () => {
    const path = `/v1/people/${company.crewLead.personId}/password`;
    const set = async (password: string): Promise<number> => (await company.owner.post(path, { password })).status;
    expect(await set('fourteen chars')).toBe(400);
    expect(await set('пруд и водопад у дома')).toBe(204);
    expect(await set('aaaaaaaaaaaaaaaaaaaa')).toBe(400);
    expect(await set('x'.repeat(129))).toBe(400);
    expect((await company.estimator.post(path, { password: PASSWORD })).status).toBe(403);
    const own = `/v1/people/${company.estimator.personId}/password`;
    expect((await company.estimator.post(own, { password: 'a new sentence of mine' })).body.errors[0].pointer).toBe('/currentPassword');
    expect((await company.estimator.post(own, { password: 'a new sentence of mine', currentPassword: PASSWORD })).status).toBe(204);
  });
});
