import { v7 as uuidv7 } from 'uuid';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestPond, type TestPond } from '../support/test-pond.js';

const address = '9 Sallow Bend\nAlder Falls, MI 48000';

describe('sites', () => {
  let test: TestApp;
  let company: TestCompany;
  let pond: TestPond;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    pond = await makeTestPond(company);
  });
  afterAll(() => test.close());

  it('makes a site in the company\'s time zone, and lets the crew read it', async () => {
    const made = await company.estimator.post('/v1/sites', { customerId: pond.customerId, address, accessNotes: 'Gate 36 in wide', hazards: 'Buried cable' });
    expect(made.status).toBe(201);
    expect(made.headers['etag']).toBe('"1"');
    expect(made.body).toEqual({ id: made.body.id, customerId: pond.customerId, address, timeZone: 'America/Detroit', accessNotes: 'Gate 36 in wide', hazards: 'Buried cable', position: null, createdAt: made.body.createdAt });
    const read = await company.crew.get(`/v1/sites/${made.body.id}`);
    expect(read.body).toEqual(made.body);
  });

  it('keeps where it lies on the globe, whole or not at all', async () => {
    const { body } = await company.owner.post('/v1/sites', { customerId: pond.customerId, address, position: { latitude: 42.2847, longitude: -84.4191 } });
    expect(body.position).toEqual({ latitude: 42.2847, longitude: -84.4191 });
    const path = `/v1/sites/${body.id}`;
    const half = await company.owner.patch(path, { position: { latitude: null } });
    const beyond = await company.owner.patch(path, { position: { latitude: 91 } });
    expect([half, beyond].map((answer) => [answer.status, answer.body.errors[0].pointer])).toEqual([[400, '/position/latitude'], [400, '/position/latitude']]);
    expect((await company.owner.patch(path, { position: null })).body.position).toBeNull();
  });

  it('keeps a time zone of its own until a patch takes it away', async () => {
    const { body } = await company.owner.post('/v1/sites', { customerId: pond.customerId, address, timeZone: 'America/Chicago' });
    expect(body.timeZone).toBe('America/Chicago');
    const moved = await company.owner.patch(`/v1/sites/${body.id}`, { address: '1 Reed Street', timeZone: null }, '"1"');
    expect(moved.status).toBe(200);
    expect(moved.body).toMatchObject({ address: '1 Reed Street', timeZone: 'America/Detroit', customerId: pond.customerId });
    const stale = await company.owner.patch(`/v1/sites/${body.id}`, { address }, '"1"');
    expect(stale.status).toBe(412);
  });

  it('answers a repeated create with the first result, and another body with 409', async () => {
    const body = { id: uuidv7(), customerId: pond.customerId, address };
    const first = await company.estimator.post('/v1/sites', body);
    const again = await company.estimator.post('/v1/sites', body);
    const other = await company.estimator.post('/v1/sites', { ...body, hazards: 'Steep bank' });
    expect([first.status, again.status, other.status]).toEqual([201, 200, 409]);
    expect(again.body).toEqual(first.body);
    expect(other.body.code).toBe('id-taken');
  });

  it('lists the sites of one customer', async () => {
    const other = await makeTestPond(company);
    const list = await company.crewLead.get(`/v1/sites?customerId=${other.customerId}`);
    expect(list.status).toBe(200);
    expect(list.body.items.map((item: { id: string }) => item.id)).toEqual([other.siteId]);
    const wrong = await company.crewLead.get('/v1/sites?customerId=everyone');
    expect([wrong.status, wrong.body.errors[0].pointer]).toEqual([400, '/customerId']);
  });

  it('refuses a customer that is not there, and one of another company, alike', async () => {
    const stranger = await makeTestPond(await makeTestCompany(test));
    for (const customerId of [uuidv7(), stranger.customerId]) {
      const answer = await company.owner.post('/v1/sites', { customerId, address });
      expect([answer.status, answer.body.code, answer.body.errors[0].pointer]).toEqual([422, 'no-such-reference', '/customerId']);
    }
    const { body } = await company.owner.post('/v1/sites', { customerId: pond.customerId, address });
    const moved = await company.owner.patch(`/v1/sites/${body.id}`, { customerId: stranger.customerId }, '"1"');
    expect([moved.status, moved.body.errors[0].pointer]).toEqual([422, '/customerId']);
    expect((await company.owner.get(`/v1/sites/${stranger.siteId}`)).status).toBe(404);
  });

  it('says where and why a body is wrong', async () => {
    const answer = await company.owner.post('/v1/sites', { customerId: 'mine', address: '', timeZone: '+05:00', gate: 'left' });
    expect(answer.status).toBe(400);
    expect(answer.body.errors.map((e: { pointer: string }) => e.pointer).sort()).toEqual(['/address', '/customerId', '/gate', '/timeZone']);
  });

  it('lets crew roles write no site', async () => {
    for (const client of [company.crew, company.crewLead]) {
      expect((await client.post('/v1/sites', { customerId: pond.customerId, address })).status).toBe(403);
      expect((await client.patch(`/v1/sites/${pond.siteId}`, { hazards: 'None' }, '"1"')).status).toBe(403);
    }
  });
});
