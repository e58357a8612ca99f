import { v7 as uuidv7 } from 'uuid';
import type { Actor } from '../../src/platform/auth/actor.js';
import { TenantDatabase } from '../../src/platform/database/tenant-database.js';
import { MutationKinds } from '../../src/platform/sync/mutation-kinds.js';
import { SyncedKinds } from '../../src/platform/sync/synced-kinds.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestJob } from '../support/test-job.js';
import { makeTestPond, type TestPond } from '../support/test-pond.js';

const AT = '2027-05-03T14:30:00.000Z';

describe('field facts', () => {
  let test: TestApp;
  let company: TestCompany;
  let pond: TestPond;
  let jobId: string;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    pond = await makeTestPond(company);
  });
  beforeEach(async () => {
    jobId = await makeTestJob(test, company);
  });
  afterAll(() => test.close());

  const problem = (answer: { status: number; body: { code: string; errors: { pointer: string }[] } }) => [answer.status, answer.body.code, answer.body.errors[0]?.pointer];
  const facts = (): Record<string, object> => ({
    loads: { hauledAt: AT, material: 'sediment', loads: 2, volume: { value: 10, unit: 'yd3' }, weight: { value: 9.4, unit: 'ton' }, destination: 'Tallgrass Compost Yard', ticket: 'T-20718' },
    depths: { foundAt: AT, place: 'Off the inlet', toSediment: { value: 18, unit: 'in' }, toBottom: { value: 31, unit: 'in' } },
    'material-uses': { usedAt: AT, description: 'River gravel, washed', quantity: '2.5', unit: 'ton' },
    installations: { featureId: pond.featureId, installedAt: AT, kind: 'pump', make: 'Nobody & Daughters', model: 'P-40', serialNumber: uuidv7(), warrantyUntil: '2030-05-02' },
    'water-readings': { takenAt: AT, ph: 7.8, temperature: { value: 62, unit: 'degF' }, totalAmmoniaMgPerL: 0.25 },
    'change-requests': { foundAt: AT, description: 'Liner torn behind the waterfall', attachmentIds: ['0199c3a2-5b1e-7c44-9d0a-3f6b1c2d4e5f'] },
    'sign-offs': { signedAt: AT, signedBy: 'Marta Ellingsworth', statement: 'Complete but for two stones.', drawing: 'M10 40 C 20 10, 40 10, 50 40' },
  });
  const body = (family: string, changes: object = {}) => ({ id: uuidv7(), jobId, note: 'As told', ...facts()[family], ...changes });
  const send = (family: string, changes: object = {}) => company.crewLead.post(`/v1/${family}`, body(family, changes));

  describe.each(['loads', 'depths', 'material-uses', 'installations', 'water-readings', 'change-requests', 'sign-offs'])('%s', (family) => {
    it('are taken down once, read back, listed by job and voided', async () => {
      const sent = body(family);
      const made = await company.crewLead.post(`/v1/${family}`, sent);
      expect([made.status, made.headers['etag']]).toEqual([201, '"1"']);
      expect(made.body).toMatchObject({ ...sent, recordedBy: company.crewLead.personId, voidedAt: null, voidReason: null });
      const again = await company.crewLead.post(`/v1/${family}`, sent);
      expect([again.status, again.body]).toEqual([200, made.body]);
      expect(problem(await company.crewLead.post(`/v1/${family}`, { ...sent, note: 'Otherwise' }))).toEqual([409, 'id-taken', '/id']);
      expect((await company.crew.get(`/v1/${family}/${sent.id}`)).body).toEqual(made.body);
      expect((await company.crew.get(`/v1/${family}?jobId=${jobId}`)).body.items).toEqual([made.body]);
      const path = `/v1/${family}/${sent.id}/void`;
      expect(problem(await company.crew.post(path, { reason: 'Not mine' }))).toEqual([403, 'not-allowed', undefined]);
      const voided = await company.crewLead.post(path, { reason: 'Wrong job' });
      expect([voided.status, voided.body.voidReason, voided.headers['etag']]).toEqual([200, 'Wrong job', '"2"']);
      expect((await company.owner.post(path, { reason: 'Once more' })).body).toEqual(voided.body);
    });

    it('are taken though the job is finished or cancelled: what happened is not lost', async () => {
      await company.owner.post(`/v1/jobs/${jobId}/start`);
      await company.owner.post(`/v1/jobs/${jobId}/finish`);
      expect((await send(family)).status).toBe(201);
      const other = await makeTestJob(test, company);
      await company.owner.post(`/v1/jobs/${other}/cancel`, { reason: 'Called off' });
      expect((await send(family, { jobId: other })).status).toBe(201);
    });

    it('never change, whatever the code does', async () => {
      const { body: made } = await send(family);
      const [{ table }] = await test.sql<{ table: string }>("SELECT entity AS table FROM history WHERE entity_id = $1 AND entity <> 'equipment'", [made.id]) as [{ table: string }];
      await expect(test.sql(`UPDATE ${table} SET note = 'Otherwise' WHERE id = $1`, [made.id])).rejects.toMatchObject({ code: '23001' });
    });

    it('refuse a job and a feature that are not there or another company\'s', async () => {
      const other = await makeTestCompany(test);
      for (const strange of [uuidv7(), await makeTestJob(test, other)]) expect(problem(await send(family, { jobId: strange }))).toEqual([422, 'no-such-reference', '/jobId']);
      for (const strange of [uuidv7(), (await makeTestPond(other)).featureId]) expect(problem(await send(family, { featureId: strange }))).toEqual([422, 'no-such-reference', '/featureId']);
    });
  });

  it.each([
    ['a material that it does not know', 'loads', { material: 'lunch' }, '/material'],
    ['no load at all', 'loads', { loads: 0 }, '/loads'],
    ['a load weighed in yards', 'loads', { weight: { value: 3, unit: 'yd3' } }, '/weight/unit'],
    ['a bottom above the sediment', 'depths', { toBottom: { value: 1, unit: 'ft' } }, '/toBottom'],
    ['a depth without a place', 'depths', { place: '' }, '/place'],
    ['material without a name', 'material-uses', { description: null }, '/description'],
    ['material without a unit', 'material-uses', { unit: null }, '/unit'],
    ['none of a material', 'material-uses', { quantity: '0' }, '/quantity'],
    ['a reading of nothing', 'water-readings', { ph: null, temperature: null, totalAmmoniaMgPerL: null }, ''],
    ['a pH of 15', 'water-readings', { ph: 15 }, '/ph'],
    ['an item whose warranty ended before it was put in', 'installations', { warrantyUntil: '2027-05-02' }, '/warrantyUntil'],
    ['an item that belongs to no feature', 'installations', { featureId: null }, '/featureId'],
    ['a photo that is no id', 'change-requests', { attachmentIds: ['photo.jpg'] }, '/attachmentIds/0'],
    ['a request with a price', 'change-requests', { price: '300.00' }, '/price'],
    ['a sign-off that nobody signed', 'sign-offs', { drawing: null }, '/drawing'],
    ['a signature that is a script', 'sign-offs', { drawing: 'M0 0"/><script>alert(1)</script>' }, '/drawing'],
    ['a bare local time', 'loads', { hauledAt: '2027-05-03T14:30:00' }, '/hauledAt'],
  ])('refuses %s', async (_, family, changes, pointer) => {
    expect(problem(await send(family, changes))).toEqual([400, 'invalid-input', pointer]);
  });

  it('takes a leap second for the second before it, as clocks do', async () => {
    expect((await send('loads', { hauledAt: '2016-12-31T23:59:60Z' })).body.hauledAt).toBe('2016-12-31T23:59:59.000Z');
  });

  it('refuses a pond at another site than the job\'s', async () => {
    const other = await makeTestPond(company);
    await test.sql('UPDATE job SET site_id = $2, feature_id = $3 WHERE id = $1', [jobId, pond.siteId, pond.featureId]);
    expect(problem(await send('depths', { featureId: other.featureId }))).toEqual([422, 'not-possible', '/featureId']);
    expect((await send('depths')).body.featureId).toBe(pond.featureId);
  });

  it('names a part and its unit from the catalog, and no price', async () => {
    const part = await company.owner.post('/v1/parts', { sku: uuidv7(), name: 'Liner, 45 mil', unit: 'ft2', unitCost: { amount: '0.87', currency: 'USD' }, markupPercent: '40', packSize: '1', taxCategory: 'materials' });
    const used = { partId: part.body.id as string, description: null, unit: null, quantity: '640' };
    const { body: made } = await send('material-uses', used);
    expect(made).toMatchObject({ partId: part.body.id, description: 'Liner, 45 mil', quantity: '640', unit: 'ft2' });
    expect(JSON.stringify(made)).not.toMatch(/0\.87|cost|price/i);
    expect(problem(await send('material-uses', { ...used, unit: 'yd2' }))).toEqual([400, 'invalid-input', '/unit']);
    expect(problem(await send('material-uses', { ...used, partId: uuidv7() }))).toEqual([422, 'no-such-reference', '/partId']);
  });

  it('makes an installed device the feature\'s equipment, dated in the job\'s zone, once however many of the crew take it down', async () => {
    const sent = body('installations', { installedAt: '2027-05-04T02:30:00Z' }) as unknown as { id: string; serialNumber: string };
    const { body: made } = await company.crew.post('/v1/installations', sent);
    const item = (await company.crew.get(`/v1/equipment/${made.equipmentId}`)).body;
    expect(item).toMatchObject({ id: sent.id, featureId: pond.featureId, kind: 'pump', serialNumber: sent.serialNumber, installedOn: '2027-05-03', warrantyUntil: '2030-05-02' });
    const second = await send('installations', { serialNumber: sent.serialNumber });
    expect([second.status, second.body.equipmentId]).toEqual([201, sent.id]);
  });

  it('leaves no equipment behind when the record is refused', async () => {
    const sent = body('installations', { jobId: uuidv7() }) as unknown as { id: string };
    expect((await company.crew.post('/v1/installations', sent)).status).toBe(422);
    expect((await company.crew.get(`/v1/equipment/${sent.id}`)).status).toBe(404);
  });

  it('lets crew void what they took down themselves, and keeps sign-offs to those who lead', async () => {
    const { body: made } = await company.crew.post('/v1/loads', body('loads'));
    expect((await company.crew.post(`/v1/loads/${made.id}/void`, { reason: 'Counted twice' })).status).toBe(200);
    expect((await company.crew.post('/v1/sign-offs', body('sign-offs'))).status).toBe(403);
  });

  it('tells the crew what the office says to a change request, once', async () => {
    const { body: made } = await send('change-requests');
    const path = `/v1/change-requests/${made.id}/answer`;
    expect((await company.crewLead.post(path, { decision: 'taken-up' })).status).toBe(403);
    const answered = await company.estimator.post(path, { decision: 'taken-up', answer: 'Go on at the edge' });
    expect(answered.body).toMatchObject({ decision: 'taken-up', answer: 'Go on at the edge', answeredBy: company.estimator.personId });
    expect((await company.owner.post(path, { decision: 'taken-up', answer: 'Go on at the edge' })).body).toEqual(answered.body);
    expect(problem(await company.owner.post(path, { decision: 'declined' }))).toEqual([409, 'state-conflict', undefined]);
    const { body: gone } = await send('change-requests');
    await company.crewLead.post(`/v1/change-requests/${gone.id}/void`, { reason: 'Seen twice' });
    expect((await company.owner.post(`/v1/change-requests/${gone.id}/answer`, { decision: 'declined' })).status).toBe(409);
  });

  it.each([
    ['load', 'loads'], ['depth', 'depths'], ['material-use', 'material-uses'], ['installation', 'installations'], ['water-reading', 'water-readings'], ['sign-off', 'sign-offs'], ['change-request', 'change-requests'],
  ])('takes a %s pushed twice by a phone once, and shows it to phones as to everybody', async (name, family) => {
    const actor: Actor = { companyId: company.id, personId: company.crewLead.personId, role: 'crew-lead', sessionId: null };
    const kind = test.app.get(MutationKinds, { strict: false }).find(name === 'change-request' ? 'change-request.add' : `${name}.record`);
    const context = { mutationId: uuidv7(), recordedAt: new Date(), receivedAt: new Date(), clockSkewSeconds: 0, baseRevision: null };
    const sent = body(family);
    const first = await kind?.apply(actor, { body: sent, context });
    expect(first).toEqual({ entity: name, id: sent.id, version: 1 });
    expect(await kind?.apply(actor, { body: sent, context })).toEqual(first);
    const synced = test.app.get(SyncedKinds, { strict: false }).all().find((one) => one.kind === name);
    const row = await test.app.get(TenantDatabase).read(actor, (manager) => manager.findOneByOrFail<{ id: string; version: number }>(synced?.entity ?? Object, { id: sent.id }));
    const shown = await synced?.view(actor, [row]);
    expect(shown).toEqual([(await company.crew.get(`/v1/${family}/${sent.id}`)).body]);
  });
});
