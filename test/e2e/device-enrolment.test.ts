import { v7 as uuidv7 } from 'uuid';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { type Client, clientOf, makeTestCompany, PASSWORD, signIn, type TestCompany } from '../support/test-company.js';
import { readQr } from '../support/read-qr.js';
import { newSecret } from '../support/test-device.js';

interface Enrolment {
  readonly id: string;
  readonly code: string;
  readonly payload: string;
  readonly qr: string;
  readonly expiresAt: string;
}

describe('enrolling a device', () => {
  let test: TestApp;
  let company: TestCompany;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
  });
  afterAll(() => test.close());
  afterEach(() => test.setClock(null));

  const makeCode = async (lead: Client, personId: string): Promise<Enrolment> => {
    const answer = await lead.post('/v1/device-enrolments', { personId });
    expect([answer.status, answer.text]).toEqual([201, expect.anything()]);
    return answer.body as Enrolment;
  };
  const enrol = (body: object) => test.request('post', '/v1/devices').send({ name: 'Yellow phone', secret: newSecret(), ...body });
  const signedIn = (credential: string) => test.request('post', '/v1/sessions/device').send({ credential });
  const hire = async (role: string, email: string): Promise<string> => {
    const { body } = await company.owner.post('/v1/people', { name: 'Somebody', email, role, hourlyWage: '20.00', burdenPercent: '20' });
    return body.id as string;
  };

  it('lets a phone in for the person that the code was made for', async () => {
    const { id, code } = await makeCode(company.crewLead, company.crew.personId);
    expect((await company.crewLead.get(`/v1/device-enrolments/${id}`)).body).toMatchObject({ personId: company.crew.personId, deviceId: null });
    const device = await enrol({ code });
    expect([device.status, device.body]).toEqual([201, expect.objectContaining({ personId: company.crew.personId, enrolledBy: company.crewLead.personId, name: 'Yellow phone', lastSeenAt: null, revokedAt: null })]);
    expect((await company.crewLead.get(`/v1/device-enrolments/${id}`)).body.deviceId).toBe(device.body.id);
    const session = await signedIn(device.body.credential as string);
    expect([session.status, session.body.person, session.body.company.id]).toEqual([201, { id: company.crew.personId, name: 'Test crew', role: 'crew' }, company.id]);
    const entries = await clientOf(test, session.body.accessToken as string, company.crew.personId).get('/v1/time-entries');
    expect(entries.status).toBe(200);
  });

  it('shows the code as a picture that holds no more than the code', async () => {
    const { code, payload, qr } = await makeCode(company.crewLead, company.crew.personId);
    expect(code).toMatch(/^([0-9A-HJKMNP-TV-Z]{4}-){3}[0-9A-HJKMNP-TV-Z]{4}$/);
    expect(payload).toBe(`RILLBOOK:DEVICE/${code}`);
    // All characters of the payload have the dense encoding: 25 modules and a quiet zone of 4 on each side, coarse enough for a scratched lens.
    expect(qr).toMatch(/^<svg xmlns="http:\/\/www.w3.org\/2000\/svg" viewBox="0 0 33 33"/);
    expect(qr).not.toMatch(/script|href|foreignObject/i);
  });

  it.each([0, 7, 45, 180])('shows a picture that a camera held %d degrees askew reads, and that lets the phone in', async (askew) => {
    const { qr, payload } = await makeCode(company.crewLead, company.crew.personId);
    const [text, ...others] = await readQr(qr, askew);
    expect([text, others]).toEqual([payload, []]);
    expect((await enrol({ code: text })).status).toBe(201);
  });

  it('answers a request sent again with the first device, since its answer may have been lost', async () => {
    const { code } = await makeCode(company.crewLead, company.crew.personId);
    const body = { id: uuidv7(), code, secret: newSecret() };
    const first = await enrol(body);
    const again = await enrol(body);
    expect([first.status, again.status]).toEqual([201, 200]);
    expect(again.body).toEqual(first.body);
    test.setClock(new Date(Date.now() + 3_600_000).toISOString());
    expect((await enrol(body)).body.credential).toBe(first.body.credential);
  });

  it('takes a code once, even from two phones at the same moment', async () => {
    const { code } = await makeCode(company.crewLead, company.crew.personId);
    const answers = await Promise.all([enrol({ code }), enrol({ code }), enrol({ code })]);
    expect(answers.map(({ status }) => status).sort()).toEqual([201, 401, 401]);
    const [{ n } = { n: '' }] = await test.sql<{ n: string }>('SELECT count(*) AS n FROM device d JOIN device_enrolment e ON e.id = d.enrolment_id WHERE d.id = $1', [answers.find(({ status }) => status === 201)?.body.id]);
    expect(n).toBe('1');
  });

  it('takes a code as people type it', async () => {
    const { code } = await makeCode(company.crewLead, company.crew.personId);
    const typed = code.toLowerCase().replaceAll('-', ' ').replaceAll('0', 'o').replaceAll('1', 'l');
    expect((await enrol({ code: typed })).status).toBe(201);
  });

  it('refuses a code after ten minutes', async () => {
    const { code, expiresAt } = await makeCode(company.crewLead, company.crew.personId);
    test.setClock(expiresAt);
    expect((await enrol({ code })).body.code).toBe('enrolment-refused');
    test.setClock(new Date(Date.parse(expiresAt) - 1_000).toISOString());
    expect((await enrol({ code })).status).toBe(201);
  });

  it('refuses a code once the person got a newer one', async () => {
    const older = await makeCode(company.crewLead, company.crew.personId);
    const newer = await makeCode(company.crewLead, company.crew.personId);
    expect([(await enrol({ code: older.code })).status, (await enrol({ code: newer.code })).status]).toEqual([401, 201]);
  });

  it('leaves a person one good code, however many are made at the same moment', async () => {
    const made = await Promise.all(Array.from({ length: 5 }, () => makeCode(company.crewLead, company.crew.personId)));
    const statuses: number[] = [];
    for (const { code } of made) statuses.push((await enrol({ code })).status);
    expect(statuses.sort()).toEqual([201, 401, 401, 401, 401]);
  });

  it('refuses a code once the one who made it signed out', async () => {
    const { body } = await company.owner.get(`/v1/people/${company.crewLead.personId}`);
    const lead = await signIn(test, body.email as string);
    const { code } = await makeCode(lead, company.crew.personId);
    await lead.delete('/v1/sessions/current');
    expect((await enrol({ code })).status).toBe(401);
  });

  it('refuses a code once its person was promoted above the one who made it', async () => {
    const personId = await hire('crew', 'riser@fernhollow.example');
    const { code } = await makeCode(company.crewLead, personId);
    await company.owner.patch(`/v1/people/${personId}`, { role: 'estimator' });
    expect((await enrol({ code })).status).toBe(401);
  });

  it('refuses a code once its person was dismissed, and makes none for them', async () => {
    const personId = await hire('crew', 'leaver@fernhollow.example');
    const { code } = await makeCode(company.crewLead, personId);
    await company.owner.patch(`/v1/people/${personId}`, { active: false });
    expect((await enrol({ code })).status).toBe(401);
    const none = await company.crewLead.post('/v1/device-enrolments', { personId });
    expect([none.status, none.body.errors[0].pointer]).toEqual([422, '/personId']);
    await company.owner.patch(`/v1/people/${personId}`, { active: true });
    expect((await enrol({ code })).status).toBe(401);
  });

  it('answers alike for codes that are mistyped, used, expired and never were', async () => {
    const { code } = await makeCode(company.crewLead, company.crew.personId);
    await enrol({ code });
    const answers = await Promise.all([code, 'K7QF', '0000-0000-0000-0000', 'not a code at all'].map((text) => enrol({ code: text })));
    expect(new Set(answers.map(({ body }) => JSON.stringify(body)))).toEqual(new Set([JSON.stringify(answers[0]?.body)]));
    expect(answers[0]?.status).toBe(401);
  });

  it('lets people vouch for themselves and those below them only', async () => {
    const otherLead = await hire('crew-lead', 'other-lead@fernhollow.example');
    const status = async (client: Client, personId: string): Promise<number> => (await client.post('/v1/device-enrolments', { personId })).status;
    const { owner, estimator, crewLead, crew } = company;
    for (const [client, expected] of [[owner, [201, 201, 201, 201]], [estimator, [403, 201, 201, 201]], [crewLead, [403, 403, 201, 201]], [crew, [403, 403, 403, 403]]] as const) {
      expect(await Promise.all([owner, estimator, crewLead, crew].map((person) => status(client, person.personId)))).toEqual(expected);
    }
    expect(await status(crewLead, otherLead)).toBe(403);
  });

  it('refuses secrets that are too short or not random, and ids that are in use', async () => {
    const { code } = await makeCode(company.crewLead, company.crew.personId);
    for (const secret of ['short', 'A'.repeat(43), Buffer.alloc(32, 'abc').toString('base64url'), `${newSecret()}=`, newSecret().slice(1)]) {
      const answer = await enrol({ code, secret });
      expect([answer.status, answer.body.errors[0].pointer]).toEqual([400, '/secret']);
    }
    const taken = await enrol({ code });
    const { code: next } = await makeCode(company.crewLead, company.crew.personId);
    const clash = await enrol({ code: next, id: taken.body.id as string });
    expect([clash.status, clash.body.code]).toEqual([409, 'id-taken']);
    expect((await enrol({ code: next })).status).toBe(201);
  });

  it('keeps neither code nor secret, and none of their hashes in the journal', async () => {
    const secret = newSecret();
    const { code } = await makeCode(company.crewLead, company.crew.personId);
    const device = await enrol({ code, secret });
    const rows = await test.sql<{ text: string }>('SELECT d::text || e::text AS text FROM device d JOIN device_enrolment e ON e.id = d.enrolment_id WHERE d.id = $1', [device.body.id]);
    expect(rows).toHaveLength(1);
    for (const kept of [code, code.replaceAll('-', ''), secret, Buffer.from(secret, 'base64url').toString('hex'), Buffer.from(code.replaceAll('-', '')).toString('hex')]) expect(rows[0]?.text).not.toContain(kept);
    await makeCode(company.crewLead, company.crew.personId);
    await company.crewLead.post(`/v1/devices/${device.body.id}/revoke`);
    const journal = await test.sql<{ before: object | null }>("SELECT before FROM history WHERE entity IN ('device', 'device_enrolment') AND operation = 'update'");
    expect(journal.length).toBeGreaterThan(0);
    expect(journal.filter(({ before }) => /hash|digest/.test(JSON.stringify(before)))).toEqual([]);
  });

  it('limits wrong codes by address, and right ones not at all', async () => {
    const other = await startTestApp();
    try {
      const { crewLead, crew } = await makeTestCompany(other);
      const send = async (code: string): Promise<number> => (await other.request('post', '/v1/devices').send({ code, name: 'Phone', secret: newSecret() })).status;
      for (let i = 0; i < 35; i++) expect(await send((await crewLead.post('/v1/device-enrolments', { personId: crew.personId })).body.code as string)).toBe(201);
      for (let i = 0; i < 30; i++) expect(await send('0000-0000-0000-0000')).toBe(401);
      const refused = await other.request('post', '/v1/devices').send({ code: '0000-0000-0000-0000', name: 'Phone', secret: newSecret() });
      expect([refused.status, Number(refused.headers['retry-after']) > 0]).toEqual([429, true]);
    } finally {
      await other.close();
    }
  }, 30_000);

  it('lets no more wrong codes through when they are sent all at once', async () => {
    const other = await startTestApp();
    try {
      const answers = await Promise.all(Array.from({ length: 60 }, () => other.request('post', '/v1/devices').send({ code: '0000-0000-0000-0000', name: 'Phone', secret: newSecret() })));
      const statuses = answers.map(({ status }) => status);
      expect(statuses.filter((status) => status === 429)).toHaveLength(30);
      // A busy machine may let one of the others wait too long for the database.
      expect(statuses.filter((status) => ![401, 429, 503].includes(status))).toEqual([]);
    } finally {
      await other.close();
    }
  });

  it('needs the right secret to sign in, of a device and not of a session', async () => {
    const { code } = await makeCode(company.crewLead, company.crew.personId);
    const { body } = await enrol({ code });
    const bytes = Buffer.from(body.credential as string, 'base64url');
    bytes[63] = (bytes[63] ?? 0) ^ 1;
    const { body: person } = await company.owner.get(`/v1/people/${company.crew.personId}`);
    const { body: session } = await test.request('post', '/v1/sessions').send({ email: person.email as string, password: PASSWORD });
    for (const credential of [bytes.toString('base64url'), session.refreshToken as string, 'nonsense', 'A'.repeat(86)]) {
      const answer = await signedIn(credential);
      expect([answer.status, answer.body.code]).toEqual([401, 'device-unknown']);
    }
    expect((await test.request('post', '/v1/sessions/refresh').send({ refreshToken: body.credential as string })).status).toBe(401);
  });
});
