import { randomBytes } from 'node:crypto';
import { v7 as uuidv7 } from 'uuid';
import sharp from 'sharp';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { type Client, makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestJob } from '../support/test-job.js';
import { make } from '../support/test-quote.js';
import { beginUpload, makePhoto, PDF, sha256, tus } from '../support/test-uploads.js';

describe('attachments', () => {
  let test: TestApp;
  let company: TestCompany;
  let jobId: string;
  let featureId: string;
  let equipmentId: string;
  let costId: string;
  let color = 0x200000;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    jobId = await makeTestJob(test, company);
    const customerId = await make(company.owner, '/v1/customers', { name: 'Marta Ellingsworth' });
    const siteId = await make(company.owner, '/v1/sites', { customerId, address: '4 Osier Court' });
    featureId = await make(company.owner, '/v1/features', { siteId, kind: 'pond', name: 'Lower pond' });
    equipmentId = await make(company.owner, '/v1/equipment', { featureId, kind: 'pump' });
    costId = await make(company.owner, '/v1/costs', { jobId, costCode: 'hauling', kind: 'disposal', description: 'Tipping fee', amount: { amount: '187.31', currency: 'USD' }, incurredOn: '2026-05-11' });
  });
  afterAll(() => test.close());

  const photo = (): Promise<Buffer> => makePhoto(`#${(color += 12345).toString(16)}`);
  const upload = async (client: Client, bytes?: Buffer) => client.upload(bytes ?? (await photo()));
  const body = async (client: Client, changes: object = {}) => ({ id: uuidv7(), uploadId: await upload(client), subject: { kind: 'job', id: jobId }, kind: 'photo', ...changes });
  const attach = async (client: Client, changes: object = {}) => client.post('/v1/attachments', await body(client, changes));
  const problem = (answer: { status: number; body: { code: string; errors: { pointer: string }[] } }) => [answer.status, answer.body.code, answer.body.errors[0]?.pointer];
  const listed = async (client: Client, query: string) => (await client.get(`/v1/attachments?${query}`)).body.items.map((item: { id: string }) => item.id) as string[];
  const download = (client: Client, path: string, headers: Record<string, string> = {}) => client.get(path).set(headers).buffer(true).parse((response, done) => {
    const chunks: Buffer[] = [];
    response.on('data', (chunk: Buffer) => chunks.push(chunk)).on('end', () => done(null, Buffer.concat(chunks)));
  });
  const bytesOf = async (client: Client, id: string, what = 'content') => (await download(client, `/v1/attachments/${id}/${what}`)).body as Buffer;

  it('attaches a photo upright and without its location, and gives it and its thumbnail with an ETag', async () => {
    const made = await attach(company.crew, { caption: 'North edge', takenAt: '2026-05-11T08:30:00-04:00' });
    expect([made.status, made.headers['etag']]).toEqual([201, '"1"']);
    expect(made.body).toMatchObject({ subject: { kind: 'job', id: jobId }, kind: 'photo', caption: 'North edge', takenAt: '2026-05-11T12:30:00.000Z', attachedBy: company.crew.personId, mediaType: 'image/jpeg', width: 60, height: 80, hasThumbnail: true, voidedAt: null });
    const path = `/v1/attachments/${made.body.id}`;
    expect((await company.crewLead.get(path)).body).toEqual(made.body);
    const content = await company.crewLead.get(`${path}/content`);
    expect(content.headers).toMatchObject({ 'content-type': 'image/jpeg', 'cache-control': 'private, no-cache', 'x-content-type-options': 'nosniff', 'content-security-policy': "default-src 'none'; sandbox", etag: `"${made.body.sha256}"` });
    const bytes = await bytesOf(company.owner, made.body.id);
    expect([sha256(bytes), bytes.length]).toEqual([made.body.sha256, made.body.size]);
    const { exif, orientation, width, height } = await sharp(bytes).metadata();
    expect([exif, orientation, width, height]).toEqual([undefined, undefined, 60, 80]);
    expect((await company.owner.get(`${path}/content`).set('if-none-match', `"${made.body.sha256}"`)).status).toBe(304);
    expect((await sharp(await bytesOf(company.owner, made.body.id, 'thumbnail')).metadata()).width).toBe(60);
  });

  it('takes a photo of a leap second', async () => {
    const made = await attach(company.crew, { takenAt: '2016-12-31T23:59:60Z' });
    expect([made.status, made.body.takenAt]).toEqual([201, '2016-12-31T23:59:59.000Z']);
  });

  it('makes the thumbnail of a large photo small', async () => {
    const large = await sharp({ create: { width: 1600, height: 1200, channels: 3, background: '#228844' } }).png().toBuffer();
    const made = await attach(company.crew, { uploadId: await upload(company.crew, large) });
    expect([made.body.mediaType, made.body.width]).toEqual(['image/png', 1600]);
    const { width, height, format } = await sharp(await bytesOf(company.crew, made.body.id, 'thumbnail')).metadata();
    expect([width, height, format]).toEqual([320, 240, 'jpeg']);
  });

  it('keeps a photo as it came when the company wants its location', async () => {
    const other = await makeTestCompany(test, { keepPhotoLocation: true });
    const bytes = await photo();
    expect((await sharp(bytes).metadata()).exif).toBeDefined();
    const made = await attach(other.crew, { uploadId: await upload(other.crew, bytes), subject: { kind: 'job', id: await makeTestJob(test, other) } });
    expect([made.body.sha256, made.body.width, made.body.height]).toEqual([sha256(bytes), 60, 80]);
    expect((await bytesOf(other.crew, made.body.id)).equals(bytes)).toBe(true);
  });

  it('goes on with a file where the connection was lost, and only with the same file', async () => {
    const large = Buffer.concat([PDF, randomBytes(1_500_000)]);
    const made = await attach(company.crew, { kind: 'document', uploadId: await upload(company.crew, large) });
    const path = `/v1/attachments/${made.body.id}/content`;
    const etag = `"${made.body.sha256}"`;
    const part = async (headers: Record<string, string>) => {
      const answer = await download(company.crewLead, path, headers);
      return [answer.status, answer.headers['content-range'], answer.headers['content-length'], (answer.body as Buffer).equals(large.subarray(700_000))];
    };
    const rest = String(large.length - 700_000);
    expect(await part({ range: 'bytes=700000-' })).toEqual([206, `bytes 700000-${large.length - 1}/${large.length}`, rest, true]);
    expect(await part({ range: 'bytes=700000-', 'if-range': etag })).toEqual([206, `bytes 700000-${large.length - 1}/${large.length}`, rest, true]);
    for (const other of ['"another"', `W/${etag}`, 'Wed, 11 May 2026 08:00:00 GMT']) expect(await part({ range: 'bytes=700000-', 'if-range': other })).toEqual([200, undefined, String(large.length), false]);
    const beyond = await company.crew.get(path).set('range', `bytes=${large.length}-`);
    expect([beyond.status, beyond.body.code, beyond.headers['content-range']]).toEqual([416, 'range-not-satisfiable', `bytes */${large.length}`]);
    expect((await bytesOf(company.crew, made.body.id)).equals(large)).toBe(true);
    for (const known of ['*', `W/${etag}`, `"another", ${etag}`]) expect((await company.crew.get(path).set({ 'if-none-match': known, range: 'bytes=0-1' })).status).toBe(304);
    const head = await test.http().head(path).set({ authorization: `Bearer ${company.crew.token}`, range: 'bytes=0-1' });
    expect([head.status, head.headers]).toEqual([200, expect.objectContaining({ etag, 'accept-ranges': 'bytes', 'content-length': String(large.length), 'content-type': 'application/pdf' })]);
  });

  it('answers a repeated request with the first result, though the upload is gone since, and another body with 409', async () => {
    const request = await body(company.crew);
    const first = await company.crew.post('/v1/attachments', request);
    await tus(test, company.crew.token, 'delete', `/v1/uploads/${request.uploadId}`);
    const again = await company.crew.post('/v1/attachments', request);
    expect([first.status, again.status, again.body]).toEqual([201, 200, first.body]);
    expect(problem(await company.crew.post('/v1/attachments', { ...request, kind: 'document' }))).toEqual([409, 'id-taken', '/id']);
    expect((await company.crew.get(`/v1/attachments/${request.id}/content`)).status).toBe(200);
  });

  it('stores the same photo once, whoever sends it', async () => {
    const bytes = await photo();
    const made = [await attach(company.crew, { uploadId: await upload(company.crew, bytes) }), await attach(company.owner, { uploadId: await upload(company.owner, bytes) })];
    const [name] = new Set(made.map(({ body: { sha256: sum } }) => sum as string));
    expect(made.map(({ body: { sha256: sum } }) => sum as string)).toEqual([name, name]);
    expect(await test.sql("SELECT FROM stored_file WHERE encode(sha256, 'hex') = $1", [name])).toHaveLength(1);
  });

  it('attaches to a feature, a piece of equipment and a cost, and lists by each', async () => {
    const uploadId = await upload(company.owner);
    const ids: Record<string, string> = {};
    for (const [kind, id] of Object.entries({ feature: featureId, equipment: equipmentId, cost: costId })) {
      const made = await attach(company.owner, { uploadId, subject: { kind, id } });
      expect([made.status, made.body.subject]).toEqual([201, { kind, id }]);
      ids[kind] = made.body.id as string;
    }
    expect(await listed(company.owner, `featureId=${featureId}`)).toEqual([ids['feature']]);
    expect(await listed(company.owner, `equipmentId=${equipmentId}`)).toEqual([ids['equipment']]);
    expect(await listed(company.owner, `costId=${costId}`)).toEqual([ids['cost']]);
    expect(await listed(company.crew, `costId=${costId}`)).toEqual([]);
    expect((await company.crew.get(`/v1/attachments/${ids['cost']}`)).status).toBe(404);
  });

  it('shows a receipt to owner, estimator and whoever took it, and to nobody else on any way', async () => {
    const made = await attach(company.crew, { kind: 'receipt', uploadId: await upload(company.crew, PDF) });
    expect([made.status, made.body.mediaType, made.body.hasThumbnail]).toEqual([201, 'application/pdf', false]);
    const path = `/v1/attachments/${made.body.id}`;
    for (const client of [company.owner, company.estimator, company.crew]) {
      const content = await client.get(`${path}/content`);
      expect([content.status, content.headers['content-disposition']]).toEqual([200, `attachment; filename="${made.body.id}.pdf"`]);
      expect(await listed(client, `jobId=${jobId}`)).toContain(made.body.id);
    }
    const answers = [await company.crewLead.get(path), await company.crewLead.get(`${path}/content`), await company.crewLead.get(`${path}/thumbnail`), await company.crewLead.post(`${path}/void`, { reason: 'x' })];
    expect(answers.map(({ status }) => status)).toEqual([404, 404, 404, 404]);
    expect(await listed(company.crewLead, `jobId=${jobId}`)).not.toContain(made.body.id);
    expect((await company.owner.get(`${path}/thumbnail`)).status).toBe(404);
  });

  it('becomes the receipt of a cost', async () => {
    const made = await attach(company.crew, { kind: 'receipt' });
    const booked = await company.owner.patch(`/v1/costs/${costId}`, { receiptId: made.body.id });
    expect([booked.status, booked.body.receiptId]).toEqual([200, made.body.id]);
    expect(problem(await company.owner.patch(`/v1/costs/${costId}`, { receiptId: uuidv7() }))).toEqual([422, 'no-such-reference', '/receiptId']);
  });

  it('refuses crew who attach to a cost, whether it is there or not', async () => {
    for (const id of [costId, uuidv7()]) expect(problem(await attach(company.crewLead, { subject: { kind: 'cost', id } }))).toEqual([403, 'not-allowed', '/subject/kind']);
  });

  it('refuses things and uploads that are not there, are another company\'s or another person\'s', async () => {
    const other = await makeTestCompany(test);
    const theirs = await makeTestJob(test, other);
    for (const id of [uuidv7(), theirs]) expect(problem(await attach(company.crew, { subject: { kind: 'job', id } }))).toEqual([422, 'no-such-reference', '/subject/id']);
    for (const kind of ['feature', 'equipment', 'cost']) expect(problem(await attach(company.owner, { subject: { kind, id: uuidv7() } }))).toEqual([422, 'no-such-reference', '/subject/id']);
    for (const uploadId of [uuidv7(), await upload(company.crewLead), await upload(other.crew)]) expect(problem(await attach(company.crew, { uploadId }))).toEqual([422, 'no-such-reference', '/uploadId']);
    const unfinished = (await beginUpload(test, company.crew.token, await photo())).split('/').at(-1);
    expect(problem(await attach(company.crew, { uploadId: unfinished }))).toEqual([409, 'state-conflict', '/uploadId']);
    expect(problem(await attach(company.crew, { uploadId: await upload(company.crew, PDF) }))).toEqual([400, 'invalid-input', '/kind']);
  });

  it('finishes an upload whose last piece came just before the service stopped', async () => {
    const bytes = await photo();
    const id = (await beginUpload(test, company.crew.token, bytes)).split('/').at(-1);
    await test.sql('INSERT INTO upload_piece (company_id, upload_id, starts_at, bytes) VALUES ($1, $2, 0, $3)', [company.id, id, bytes]);
    expect((await attach(company.crew, { uploadId: id })).status).toBe(201);
  });

  it('voids a photo once, with a reason: crew their own, and its content goes to the office alone', async () => {
    const made = await attach(company.crewLead);
    const path = `/v1/attachments/${made.body.id}`;
    expect((await company.crew.post(`${path}/void`, { reason: 'x' })).status).toBe(403);
    const voided = await company.crewLead.post(`${path}/void`, { reason: 'Shows the neighbours' });
    expect(voided.body).toMatchObject({ voidReason: 'Shows the neighbours', voidedAt: expect.stringMatching(/Z$/) });
    expect((await company.owner.post(`${path}/void`, { reason: 'Another' })).body).toEqual(voided.body);
    expect((await company.crewLead.get(`${path}/content`)).status).toBe(404);
    expect((await company.crewLead.get(`${path}/thumbnail`)).status).toBe(404);
    expect((await company.owner.get(`${path}/content`)).status).toBe(200);
    expect((await company.crewLead.get(path)).body).toEqual(voided.body);
  });

  it('hides everything from another company', async () => {
    const made = await attach(company.crew);
    const { owner } = await makeTestCompany(test);
    const path = `/v1/attachments/${made.body.id}`;
    const answers = [await owner.get(path), await owner.get(`${path}/content`), await owner.get(`${path}/thumbnail`), await owner.post(`${path}/void`, { reason: 'x' })];
    expect(answers.map(({ status }) => status)).toEqual([404, 404, 404, 404]);
    expect(await listed(owner, `jobId=${jobId}`)).toEqual([]);
  });
});
