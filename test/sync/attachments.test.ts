import { v7 as uuidv7 } from 'uuid';
import { CompaniesService } from '../../src/features/companies/index.js';
import { JobCrew } from '../../src/features/jobs/index.js';
import { requestContext } from '../../src/platform/context/request-context.js';
import { SyncedKinds } from '../../src/platform/sync/synced-kinds.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { actorOf, makeTestJob } from '../support/test-job.js';
import { make } from '../support/test-quote.js';
import { beginUpload, BYTES, makePhoto, tus } from '../support/test-uploads.js';
import { TestPhone } from './support.js';

describe('attachments on phones', () => {
  let test: TestApp;
  let company: TestCompany;
  let jobId: string;
  let featureId: string;
  let color = 0x300000;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    const customerId = await make(company.owner, '/v1/customers', { name: 'Marta Ellingsworth' });
    const siteId = await make(company.owner, '/v1/sites', { customerId, address: '4 Osier Court' });
    featureId = await make(company.owner, '/v1/features', { siteId, kind: 'pond', name: 'Lower pond' });
    jobId = await makeTestJob(test, company);
    await test.sql('UPDATE job SET feature_id = $1 WHERE id = $2', [featureId, jobId]);
    await test.app.get(JobCrew, { strict: false }).join(actorOf(company), jobId, [company.crew.personId, company.crewLead.personId]);
  });
  afterAll(() => test.close());

  const photo = (): Promise<Buffer> => makePhoto(`#${(color += 12345).toString(16)}`);
  const body = (uploadId: string, changes: object = {}) => ({ id: uuidv7(), uploadId, subject: { kind: 'job', id: jobId }, kind: 'photo', ...changes });

  it('are pushed like any fact, once, however often they are sent', async () => {
    const phone = new TestPhone(company.crew, test);
    const mutation = phone.mutation('attachment.add', body(await company.crew.upload(await photo())));
    const [first] = await phone.push([mutation]);
    const [again] = await phone.push([mutation]);
    expect([first?.outcome, first?.entity, again?.outcome, again?.entityId]).toEqual(['applied', 'attachment', 'duplicate', first?.entityId]);
    await phone.pull();
    expect(phone.ids('attachment')).toContain(first?.entityId);
  });

  it('wait for a file that is still on its way instead of being refused for good', async () => {
    const phone = new TestPhone(company.crew, test);
    const bytes = await photo();
    const address = await beginUpload(test, company.crew.token, bytes);
    const mutation = phone.mutation('attachment.add', body(address.split('/').at(-1) ?? ''));
    const [early] = await phone.push([mutation]);
    expect([early?.outcome, early?.problem?.code, early?.final]).toEqual(['rejected', 'dependency-missing', false]);
    await tus(test, company.crew.token, 'patch', address, { 'upload-offset': '0', 'content-type': BYTES }).send(bytes).expect(204);
    const [later] = await phone.push([mutation]);
    expect(later?.outcome).toBe('applied');
  });

  it('work on a photo that the service left lying before the transaction of its mutation, not within it', async () => {
    const phone = new TestPhone(company.crew, test);
    const bytes = await photo();
    const uploadId = (await beginUpload(test, company.crew.token, bytes)).split('/').at(-1) ?? '';
    await test.sql('INSERT INTO upload_piece (company_id, upload_id, starts_at, bytes) VALUES ($1, $2, 0, $3)', [company.id, uploadId, bytes]);
    const companies = test.app.get(CompaniesService, { strict: false });
    const within: boolean[] = [];
    const current = companies.current.bind(companies);
    // The company is asked whether it keeps locations, just before the work.
    companies.current = (actor) => {
      within.push(requestContext.getStore()?.scope?.writing === true);
      return current(actor);
    };
    const [outcome] = await phone.push([phone.mutation('attachment.add', body(uploadId))]);
    companies.current = current;
    expect([outcome?.outcome, within]).toEqual(['applied', [false]]);
  });

  it('are voided from a phone, once, by whoever may', async () => {
    const [mine, lead] = [new TestPhone(company.crew, test), new TestPhone(company.crewLead, test)];
    const add = lead.mutation('attachment.add', body(await company.crewLead.upload(await photo())));
    const [added] = await lead.push([add]);
    const id = added?.entityId ?? '';
    const [notMine] = await mine.push([mine.mutation('attachment.void', { id, reason: 'Blurred' })]);
    expect([notMine?.outcome, notMine?.problem?.code]).toEqual(['rejected', 'not-allowed']);
    const [voided] = await lead.push([lead.mutation('attachment.void', { id, reason: 'Shows the neighbours' })]);
    const [again] = await lead.push([lead.mutation('attachment.void', { id, reason: 'Another' })]);
    expect([voided?.outcome, voided?.revision, again?.outcome, again?.revision]).toEqual(['applied', 2, 'applied', 2]);
    await mine.pull();
    expect(mine.rows.get(`attachment ${id}`)?.value).toMatchObject({ voidReason: 'Shows the neighbours' });
  });

  it('say why a file that can not be used is refused, for good', async () => {
    const phone = new TestPhone(company.crew, test);
    const bytes = Buffer.from('no picture at all');
    const uploadId = (await beginUpload(test, company.crew.token, bytes)).split('/').at(-1) ?? '';
    await test.sql('INSERT INTO upload_piece (company_id, upload_id, starts_at, bytes) VALUES ($1, $2, 0, $3)', [company.id, uploadId, bytes]);
    const mutation = phone.mutation('attachment.add', body(uploadId));
    const [refused] = await phone.push([mutation]);
    expect([refused?.outcome, refused?.problem?.code, refused?.final]).toEqual(['rejected', 'wrong-media-type', true]);
    expect((await phone.push([mutation]))[0]?.outcome).toBe('duplicate');
  });

  it('reach the crew of the job, also those of its feature, and leave the phone with the job; receipts reach none but the office', async () => {
    const phones = { crew: new TestPhone(company.crew, test), lead: new TestPhone(company.crewLead, test), office: new TestPhone(company.owner, test) };
    const stranger = new TestPhone((await makeTestCompany(test)).owner, test);
    const make_ = async (changes: object): Promise<string> => {
      const answer = await company.crew.post('/v1/attachments', body(await company.crew.upload(await photo()), changes)).expect(201);
      return answer.body.id as string;
    };
    const [ofJob, ofFeature, receipt] = [await make_({}), await make_({ subject: { kind: 'feature', id: featureId } }), await make_({ kind: 'receipt' })];
    for (const phone of [...Object.values(phones), stranger]) await phone.pull();
    expect(phones.lead.ids('attachment')).toEqual(expect.arrayContaining([ofJob, ofFeature]));
    expect(phones.office.ids('attachment')).toEqual(expect.arrayContaining([ofJob, ofFeature, receipt]));
    for (const phone of [phones.lead, phones.crew, stranger]) expect(phone.received.map(({ id }) => id)).not.toContain(receipt);
    expect(stranger.ids('attachment')).toEqual([]);
    await test.app.get(JobCrew, { strict: false }).leave(actorOf(company), jobId, [company.crewLead.personId]);
    await phones.lead.pull();
    expect(phones.lead.ids('attachment')).toEqual([]);
  });

  it('are of the same jobs from both ends, asked by row and asked by job', async () => {
    const other = await makeTestJob(test, company);
    const later = await makeTestJob(test, company);
    await test.sql('UPDATE job SET (feature_id, site_id) = (SELECT id, site_id FROM feature WHERE id = $1) WHERE id IN ($2, $3)', [featureId, jobId, later]);
    const equipmentId = await make(company.owner, '/v1/equipment', { featureId, kind: 'pump' });
    const subjects = [{ kind: 'job', id: jobId }, { kind: 'job', id: other }, { kind: 'feature', id: featureId }, { kind: 'equipment', id: equipmentId }];
    for (const subject of subjects) await make(company.owner, '/v1/attachments', body(await company.owner.upload(await photo()), { subject }));
    await make(company.owner, '/v1/attachments', body(await company.owner.upload(await photo()), { kind: 'receipt' }));
    for (const kind of test.app.get(SyncedKinds).all()) {
      if (kind.belongsTo === 'company' || kind.belongsTo.rowsOf === undefined) continue;
      const rows = await test.sql<{ byRow: boolean; byJob: boolean | null }>(
        `SELECT one.id IN (${kind.belongsTo.jobs}) AS "byRow", ${kind.belongsTo.rowsOf('one.id')} AS "byJob" FROM job one CROSS JOIN "${kind.table}" t WHERE one.company_id = $1 AND t.company_id = $1`,
        [company.id],
      );
      expect(rows.map(({ byJob }) => byJob === true)).toEqual(rows.map(({ byRow }) => byRow));
      expect(new Set(rows.map(({ byRow }) => byRow))).toEqual(new Set([true, false]));
    }
  });
});
