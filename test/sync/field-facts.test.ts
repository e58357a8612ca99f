import { v7 as uuidv7 } from 'uuid';
import { JobCrew } from '../../src/features/jobs/index.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { actorOf, makeTestJob } from '../support/test-job.js';
import { makeTestPond, type TestPond } from '../support/test-pond.js';
import { makePhoto } from '../support/test-uploads.js';
import { TestPhone } from './support.js';

const AT = '2027-05-03T14:30:00.000Z';

describe('field facts on phones', () => {
  let test: TestApp;
  let company: TestCompany;
  let pond: TestPond;
  let jobId: string;
  let color = 0x102030;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    pond = await makeTestPond(company);
    jobId = await makeTestJob(test, company);
    await test.app.get(JobCrew, { strict: false }).join(actorOf(company), jobId, [company.crew.personId, company.crewLead.personId]);
  });
  afterAll(() => test.close());

  const facts = (): Record<string, object> => ({
    'load.record': { hauledAt: AT, material: 'sediment' },
    'depth.record': { foundAt: AT, place: 'Off the inlet', toBottom: { value: 31, unit: 'in' } },
    'material-use.record': { usedAt: AT, description: 'Gravel', quantity: '2.5', unit: 'ton' },
    'installation.record': { installedAt: AT, featureId: pond.featureId, kind: 'pump' },
    'water-reading.record': { takenAt: AT, ph: 7.8 },
    'change-request.add': { foundAt: AT, description: 'Liner torn' },
    'sign-off.record': { signedAt: AT, signedBy: 'Marta Ellingsworth', statement: 'Complete.', drawing: 'M10 40 C 20 10' },
  });
  const body = (kind: string, changes: object = {}) => ({ id: uuidv7(), jobId, ...facts()[kind], ...changes });
  const photoOf = async (id: string) => company.crew.post('/v1/attachments', { id, uploadId: await company.crew.upload(await makePhoto(`#${(color += 4321).toString(16)}`)), subject: { kind: 'job', id: jobId }, kind: 'photo' });

  it.each(['load.record', 'depth.record', 'material-use.record', 'installation.record', 'water-reading.record', 'change-request.add', 'sign-off.record'])('are voided in the push that brings them, by the revision that %s makes', async (kind) => {
    const phone = new TestPhone(company.crewLead, test);
    const made = body(kind);
    const record = phone.mutation(kind, made);
    const entity = kind.split('.')[0] ?? '';
    const voiding = phone.mutation(`${entity}.void`, { id: made.id, reason: 'Wrong job' }, { baseRevision: 1, dependsOn: [record.id] });
    const outcomes = await phone.push([record, voiding]);
    expect(outcomes.map(({ outcome, revision, entityId }) => [outcome, revision, entityId])).toEqual([['applied', 1, made.id], ['applied', 2, made.id]]);
    expect((await phone.push([voiding]))[0]).toMatchObject({ outcome: 'duplicate', first: 'applied' });
    await phone.pull();
    expect(phone.rows.get(`${entity} ${made.id}`)).toMatchObject({ revision: 2, value: { voidReason: 'Wrong job' } });
    const other = phone.mutation(`${entity}.void`, { id: made.id, reason: 'Counted twice' }, { baseRevision: 1 });
    const [late] = await phone.push([other]);
    expect([late?.outcome, late?.revision, (late?.current as { voidReason: string }).voidReason]).toEqual(['conflict', 2, 'Wrong job']);
  });

  it('are voided by crew only where they took them down themselves, and never without a revision or on one that is not there', async () => {
    const [lead, crew] = [new TestPhone(company.crewLead, test), new TestPhone(company.crew, test)];
    const made = body('load.record');
    await lead.push([lead.mutation('load.record', made)]);
    const voiding = (phone: TestPhone, more: object) => phone.mutation('load.void', { id: made.id, reason: 'Not mine' }, more);
    const [denied] = await crew.push([voiding(crew, { baseRevision: 1 })]);
    expect([denied?.outcome, denied?.problem?.code]).toEqual(['rejected', 'not-allowed']);
    const [bare, ahead] = await lead.push([voiding(lead, {}), voiding(lead, { baseRevision: 9 })]);
    expect([bare?.problem?.code, ahead?.outcome]).toEqual(['version-required', 'conflict']);
  });

  it('are answered by the office from a phone, on what it has read', async () => {
    const [crew, office, boss] = [new TestPhone(company.crew, test), new TestPhone(company.estimator, test), new TestPhone(company.owner, test)];
    const made = body('change-request.add');
    await crew.push([crew.mutation('change-request.add', made)]);
    const answer = (phone: TestPhone, decision: string) => phone.mutation('change-request.answer', { id: made.id, decision, answer: 'Go on at the edge' }, { baseRevision: 1 });
    const [denied] = await crew.push([answer(crew, 'taken-up')]);
    expect(denied?.problem?.code).toBe('not-allowed');
    const [[first], [second]] = await Promise.all([office.push([answer(office, 'taken-up')]), boss.push([answer(boss, 'declined')])]);
    expect([first?.outcome, second?.outcome].sort()).toEqual(['applied', 'conflict']);
    // The crew's void was decided before the answer came: they should see it first.
    const [late] = await crew.push([crew.mutation('change-request.void', { id: made.id, reason: 'Seen twice' }, { baseRevision: 1 })]);
    expect([late?.outcome, (late?.current as { answer: string }).answer]).toEqual(['conflict', 'Go on at the edge']);
    const [now] = await crew.push([crew.mutation('change-request.void', { id: made.id, reason: 'Seen twice' }, { baseRevision: 2 })]);
    expect(now?.outcome).toBe('applied');
  });

  it('say which of their photos are still on their way, to phones too, and a photo that comes is no reason for a conflict', async () => {
    const phone = new TestPhone(company.crew, test);
    const [here, late] = [uuidv7(), uuidv7()];
    await photoOf(here);
    const request = body('change-request.add', { attachmentIds: [late.toUpperCase(), here, late] });
    const sign = body('sign-off.record', { attachmentId: late });
    await phone.push([phone.mutation('change-request.add', request)]);
    await company.crewLead.post('/v1/sign-offs', sign).expect(201);
    await phone.pull();
    const missing = (): unknown[] => [`change-request ${request.id}`, `sign-off ${sign.id}`].map((key) => phone.rows.get(key)?.value['photosMissing']);
    expect(missing()).toEqual([[late], [late]]);
    const before = (await company.crew.get(`/v1/change-requests/${request.id}`)).headers['etag'];
    expect((await photoOf(late)).status).toBe(201);
    await phone.pull();
    expect(missing()).toEqual([[], []]);
    const after = await company.crew.get(`/v1/change-requests/${request.id}`);
    expect([after.body.photosMissing, after.headers['etag'] === before]).toEqual([[], false]);
    const [voided] = await phone.push([phone.mutation('change-request.void', { id: request.id, reason: 'Seen twice' }, { baseRevision: 1 })]);
    expect(voided?.outcome).toBe('applied');
  });

  it('know a photo that comes at the same moment, or after the record was voided', async () => {
    for (let round = 0; round < 6; round++) {
      const photo = uuidv7();
      const uploadId = await company.crew.upload(await makePhoto(`#${(color += 4321).toString(16)}`));
      const request = body('change-request.add', { attachmentIds: [photo] });
      await Promise.all([
        company.crew.post('/v1/change-requests', request).expect(201),
        company.crew.post('/v1/attachments', { id: photo, uploadId, subject: { kind: 'job', id: jobId }, kind: 'photo' }).expect(201),
      ]);
      expect((await company.crew.get(`/v1/change-requests/${request.id}`)).body.photosMissing).toEqual([]);
    }
    const photo = uuidv7();
    const gone = body('change-request.add', { attachmentIds: [photo] });
    await company.crew.post('/v1/change-requests', gone).expect(201);
    await company.crew.post(`/v1/change-requests/${gone.id}/void`, { reason: 'Seen twice' }).expect(200);
    expect((await photoOf(photo)).status).toBe(201);
    expect((await company.crew.get(`/v1/change-requests/${gone.id}`)).body.photosMissing).toEqual([]);
  });
});
