import { v7 as uuidv7 } from 'uuid';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestPond, type TestPond } from '../support/test-pond.js';

describe('equipment', () => {
  let test: TestApp;
  let company: TestCompany;
  let pond: TestPond;
  const skimmer = () => ({ featureId: pond.featureId, kind: 'skimmer' });

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    pond = await makeTestPond(company);
  });
  afterAll(() => test.close());

  it('takes what a crew lead finds, down to its settings, and lets the crew read it', async () => {
    const body = {
      featureId: pond.featureId, kind: 'doser', make: 'Nobody & Daughters', model: 'D-4', serialNumber: '000-17', installedOn: '2021-05-20', warrantyUntil: '2024-05-19',
      condition: 'Works', settings: { 'timer on': '06:00', 'dose ml per day': 12.5, 'runs in winter': false },
    };
    const made = await company.crewLead.post('/v1/equipment', body);
    expect(made.status).toBe(201);
    expect(made.body).toEqual({ id: made.body.id, ...body, removedOn: null, createdAt: made.body.createdAt });
    expect((await company.crew.get(`/v1/equipment/${made.body.id}`)).body).toEqual(made.body);
  });

  it('merges the settings of a patch name by name', async () => {
    const { body } = await company.owner.post('/v1/equipment', { ...skimmer(), settings: { speed: 3, mode: 'summer' } });
    const path = `/v1/equipment/${body.id}`;
    const merged = await company.owner.patch(path, { settings: { speed: 4, mode: null, lamp: true } }, '"1"');
    expect(merged.body.settings).toEqual({ speed: 4, lamp: true });
    const cleared = await company.owner.patch(path, { settings: null }, '"2"');
    expect(cleared.body.settings).toEqual({});
  });

  it('answers a repeated create with the first result, and another body with 409', async () => {
    const body = { id: uuidv7(), ...skimmer() };
    const answers = [await company.owner.post('/v1/equipment', body), await company.owner.post('/v1/equipment', body), await company.owner.post('/v1/equipment', { ...body, kind: 'pump' })];
    expect(answers.map((answer) => answer.status)).toEqual([201, 200, 409]);
    expect(answers[2]?.body.code).toBe('id-taken');
  });

  it('refuses a warranty that ends before the item was installed, at create and at patch', async () => {
    const wrong = await company.owner.post('/v1/equipment', { ...skimmer(), installedOn: '2026-05-02', warrantyUntil: '2026-05-01' });
    expect([wrong.status, wrong.body.code, wrong.body.errors[0].pointer]).toEqual([400, 'invalid-input', '/warrantyUntil']);
    const sameDay = await company.owner.post('/v1/equipment', { ...skimmer(), installedOn: '2026-05-02', warrantyUntil: '2026-05-02' });
    expect(sameDay.status).toBe(201);
    const patched = await company.owner.patch(`/v1/equipment/${sameDay.body.id}`, { installedOn: '2026-05-03' }, '"1"');
    expect([patched.status, patched.body.errors[0].pointer]).toEqual([400, '/warrantyUntil']);
  });

  it('says the day that an item was taken out, not before it was installed', async () => {
    const { body } = await company.owner.post('/v1/equipment', { ...skimmer(), installedOn: '2026-05-02' });
    const early = await company.owner.patch(`/v1/equipment/${body.id}`, { removedOn: '2026-05-01' });
    expect([early.status, early.body.errors[0].pointer]).toEqual([400, '/removedOn']);
    expect((await company.owner.patch(`/v1/equipment/${body.id}`, { removedOn: '2026-05-02' })).body.removedOn).toBe('2026-05-02');
  });

  it.each([
    ['a day that does not exist', '"installedOn": "2026-02-30"', '/installedOn'],
    ['nested settings', '"settings": {"a": {"b": 1}}', '/settings/a'],
    ['a setting beyond all numbers', '"settings": {"a": 1e400}', '/settings/a'],
    ['settings in a list', '"settings": [1]', '/settings'],
    ['a kind of 61 letters', `"kind": "${'p'.repeat(61)}"`, '/kind'],
    ['a condition of 201 letters', `"condition": "${'p'.repeat(201)}"`, '/condition'],
  ])('refuses %s', async (_name, fields, pointer) => {
    const body = `{"featureId": "${pond.featureId}", "kind": "skimmer", ${fields}}`;
    const answer = await test.http().post('/v1/equipment').set('authorization', `Bearer ${company.owner.token}`).set('content-type', 'application/json').send(body);
    expect(answer.status).toBe(400);
    expect(answer.body.errors.map((e: { pointer: string }) => e.pointer)).toEqual([pointer]);
  });

  it.each([['a zero byte', '\u0000'], ['half a surrogate pair', '\ud800']])('refuses %s in a setting rather than failing to store it', async (_name, text) => {
    const answer = await company.owner.post('/v1/equipment', { ...skimmer(), settings: { mode: text } });
    expect([answer.status, answer.body.code]).toEqual([400, 'invalid-input']);
  });

  it('lists the equipment of one feature page by page', async () => {
    const { featureId } = await makeTestPond(company);
    const ids: string[] = [];
    for (const kind of ['pump', 'light', 'valve']) ids.unshift((await company.owner.post('/v1/equipment', { featureId, kind })).body.id as string);
    const first = await company.crew.get(`/v1/equipment?featureId=${featureId}&limit=2`);
    const next = /<([^>]+)>; rel="next"/.exec(first.headers['link'] ?? '')?.[1] ?? '';
    const second = await company.crew.get(next);
    expect([...first.body.items, ...second.body.items].map((item: { id: string }) => item.id)).toEqual(ids);
    expect(second.body.nextCursor).toBeNull();
  });

  it('refuses a feature that is not there, and hides the equipment of another company', async () => {
    const other = await makeTestCompany(test);
    const stranger = await makeTestPond(other);
    for (const featureId of [uuidv7(), stranger.featureId]) {
      const answer = await company.owner.post('/v1/equipment', { featureId, kind: 'pump' });
      expect([answer.status, answer.body.code, answer.body.errors[0].pointer]).toEqual([422, 'no-such-reference', '/featureId']);
    }
    const { body } = await other.owner.post('/v1/equipment', { featureId: stranger.featureId, kind: 'pump' });
    expect((await company.owner.get(`/v1/equipment/${body.id}`)).status).toBe(404);
    expect((await company.owner.patch(`/v1/equipment/${body.id}`, { kind: 'light' }, '"1"')).status).toBe(404);
  });

  it('lets the crew write nothing, and a crew lead change nothing', async () => {
    const { body } = await company.owner.post('/v1/equipment', skimmer());
    expect((await company.crew.post('/v1/equipment', skimmer())).status).toBe(403);
    expect((await company.crewLead.patch(`/v1/equipment/${body.id}`, { kind: 'pump' }, '"1"')).status).toBe(403);
  });
});
