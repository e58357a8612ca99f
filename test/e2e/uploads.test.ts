import { createHash, randomBytes } from 'node:crypto';
import { Agent, request as httpRequest } from 'node:http';
import sharp from 'sharp';
import { v7 as uuidv7 } from 'uuid';
import { UploadEntity } from '../../src/features/attachments/uploads/upload.entity.js';
import { MOST_WAITING_BYTES } from '../../src/features/attachments/uploads/upload-limits.js';
import { TenantDatabase } from '../../src/platform/database/tenant-database.js';
import { FileStore } from '../../src/platform/files/file-store.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { actorOf, makeTestJob } from '../support/test-job.js';
import { beginUpload, BYTES, makePhoto, metadataOf, PDF, sha256, tus } from '../support/test-uploads.js';

describe('uploads', () => {
  let test: TestApp;
  let company: TestCompany;
  let color = 0x100000;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
  });
  afterEach(() => test.setClock(null));
  afterAll(() => test.close());

  /** Another photo each time: the same one would go on with the upload of another test. */
  const photo = (): Promise<Buffer> => makePhoto(`#${(color += 12345).toString(16)}`);
  const begin = (bytes: Buffer) => beginUpload(test, company.crew.token, bytes);
  const send = (address: string, offset: number, bytes: Buffer, headers: Record<string, string> = {}) =>
    tus(test, company.crew.token, 'patch', address, { 'upload-offset': String(offset), 'content-type': BYTES, ...headers }).send(bytes);
  const standing = async (address: string, token = company.crew.token) => {
    const { status, headers } = await test.http().head(address).set({ authorization: `Bearer ${token}`, 'tus-resumable': '1.0.0' });
    return [status, headers['upload-offset'], headers['upload-length']];
  };
  const stored = async (address: string) => test.sql<{ file_sha256: Buffer | null }>('SELECT file_sha256 FROM upload WHERE id = $1', [address.split('/').at(-1)]);

  it('takes a file in pieces, tells where it stands, and checks it after the last one', async () => {
    const bytes = await photo();
    const address = await begin(bytes);
    expect(address).toMatch(/^\/v1\/uploads\/[0-9a-f-]{36}$/);
    expect(await standing(address)).toEqual([200, '0', String(bytes.length)]);
    const first = await send(address, 0, bytes.subarray(0, 300));
    expect([first.status, first.headers['upload-offset'], first.headers['tus-resumable']]).toEqual([204, '300', '1.0.0']);
    expect(await standing(address)).toEqual([200, '300', String(bytes.length)]);
    expect((await stored(address))[0]?.file_sha256).toBeNull();
    const last = await send(address, 300, bytes.subarray(300));
    expect([last.status, last.headers['upload-offset']]).toEqual([204, String(bytes.length)]);
    expect((await stored(address))[0]?.file_sha256).not.toBeNull();
    expect(await standing(address)).toEqual([200, String(bytes.length), String(bytes.length)]);
    expect(await test.sql('SELECT FROM upload_piece WHERE upload_id = $1', [address.split('/').at(-1)])).toEqual([]);
  });

  it('says what it can of the protocol', async () => {
    const { status, headers } = await test.http().options('/v1/uploads').set('authorization', `Bearer ${company.crew.token}`);
    expect([status, headers['tus-version'], headers['tus-extension'], headers['tus-max-size'], headers['tus-checksum-algorithm']]).toEqual([
      204, '1.0.0', 'creation,creation-with-upload,termination,expiration,checksum', String(20 * 1024 * 1024), 'sha256,sha1',
    ]);
    expect(Object.keys(headers).filter((name) => name.startsWith('access-control'))).toEqual([]);
  });

  it('keeps what came before the connection was lost', async () => {
    const bytes = randomBytes(900_000);
    const address = await begin(bytes);
    const sent = 700_000;
    await new Promise<void>((resolve) => {
      const headers = { authorization: `Bearer ${company.crew.token}`, 'tus-resumable': '1.0.0', 'upload-offset': '0', 'content-type': BYTES, 'content-length': String(bytes.length) };
      const request = httpRequest(new URL(address, test.url), { method: 'PATCH', headers });
      request.on('error', () => resolve());
      request.write(bytes.subarray(0, sent), () => setTimeout(() => request.destroy(new Error('no signal')), 300));
    });
    const [, offset] = await standing(address);
    expect(Number(offset)).toBeGreaterThan(sent * 0.7);
    expect(Number(offset)).toBeLessThanOrEqual(sent);
    const [whole] = await test.sql<{ bytes: Buffer }>("SELECT string_agg(bytes, '' ORDER BY starts_at) AS bytes FROM upload_piece WHERE upload_id = $1", [address.split('/').at(-1)]);
    expect(whole?.bytes.equals(bytes.subarray(0, Number(offset)))).toBe(true);
  });

  it('lets a phone go on at once while the service still waits for its dead connection', async () => {
    const bytes = randomBytes(600_000);
    const address = await begin(bytes);
    const headers = { authorization: `Bearer ${company.crew.token}`, 'tus-resumable': '1.0.0', 'upload-offset': '0', 'content-type': BYTES, 'content-length': String(bytes.length) };
    const dead = httpRequest(new URL(address, test.url), { method: 'PATCH', headers });
    dead.on('error', () => undefined);
    await new Promise<void>((resolve) => dead.write(bytes.subarray(0, 400_000), () => setTimeout(resolve, 200)));
    const before = Date.now();
    const [status, offset] = await standing(address);
    expect(status).toBe(200);
    expect(Number(offset)).toBeGreaterThan(250_000);
    expect(Date.now() - before).toBeLessThan(5_000);
    dead.destroy();
    const next = await send(address, Number(offset), bytes.subarray(Number(offset), Number(offset) + 1000));
    expect([next.status, next.headers['upload-offset']]).toEqual([204, String(Number(offset) + 1000)]);
  });

  it('goes on with the same upload when a phone that lost its address begins again, with bytes or without', async () => {
    const bytes = await photo();
    const address = await begin(bytes);
    await send(address, 0, bytes.subarray(0, 200));
    expect(await begin(bytes)).toBe(address);
    expect(await standing(address)).toEqual([200, '200', String(bytes.length)]);
    expect(`/v1/uploads/${await company.crew.upload(bytes)}`).toBe(address);
    expect((await stored(address))[0]?.file_sha256).not.toBeNull();
    expect(`/v1/uploads/${await company.crew.upload(bytes)}`).toBe(address);
  });

  it('refuses bytes for another place than where the upload stands', async () => {
    const bytes = await photo();
    const address = await begin(bytes);
    await send(address, 0, bytes.subarray(0, 200));
    for (const offset of [0, 100, 300]) {
      const answer = await send(address, offset, bytes.subarray(offset));
      expect([answer.status, answer.body.code]).toEqual([409, 'offset-conflict']);
    }
    expect((await standing(address))[1]).toBe('200');
  });

  it('answers the next request on the connection of one that it refused before its last byte', async () => {
    const bytes = randomBytes(3_000_000);
    const address = await begin(bytes);
    const agent = new Agent({ keepAlive: true, maxSockets: 1 });
    const ask = (method: string, headers: Record<string, string>, body?: Buffer) =>
      new Promise<number | undefined>((resolve, reject) => {
        const given = { authorization: `Bearer ${company.crew.token}`, 'tus-resumable': '1.0.0', ...headers };
        const request = httpRequest(new URL(address, test.url), { method, agent, timeout: 5_000, headers: given }, (answer) => answer.resume().once('end', () => resolve(answer.statusCode)));
        request.once('error', reject).once('timeout', () => request.destroy(new Error('no answer'))).end(body);
      });
    expect(await ask('PATCH', { 'upload-offset': '5', 'content-type': BYTES, 'content-length': String(bytes.length) }, bytes)).toBe(409);
    expect(await ask('HEAD', {})).toBe(200);
    agent.destroy();
  });

  it('takes no part of a query for the upload', async () => {
    const bytes = await photo();
    const address = await begin(bytes);
    const answer = await send(`${address}?from=/camera`, 0, bytes);
    expect([answer.status, answer.headers['upload-offset']]).toEqual([204, String(bytes.length)]);
  });

  it('keeps no bytes that do not have the checksum of their request', async () => {
    const bytes = await photo();
    const address = await begin(bytes);
    const part = bytes.subarray(0, 200);
    const sum = (algorithm: string, of: Buffer) => ({ 'upload-checksum': `${algorithm} ${createHash(algorithm).update(of).digest('base64')}` });
    const wrong = await send(address, 0, part, sum('sha1', Buffer.from('other bytes')));
    expect([wrong.status, wrong.body.code]).toEqual([460, 'checksum-mismatch']);
    expect((await standing(address))[1]).toBe('0');
    expect((await send(address, 0, part, sum('sha1', part))).status).toBe(204);
    expect((await send(address, 200, bytes.subarray(200, 300), sum('sha256', bytes.subarray(200, 300)))).status).toBe(204);
    const unknown = await send(address, 300, bytes.subarray(300), { 'upload-checksum': 'md5 AAAA' });
    expect([unknown.status, unknown.body.code]).toEqual([400, 'malformed-request']);
  });

  it('refuses a file that is not the one that was announced, and forgets it', async () => {
    const [meant, other] = [await photo(), await photo()];
    const address = await begin(meant);
    const bent = Buffer.concat([other, meant]).subarray(0, meant.length);
    const answer = await send(address, 0, bent);
    expect([answer.status, answer.body.code]).toEqual([460, 'checksum-mismatch']);
    expect((await standing(address))[0]).toBe(404);
  });

  it.each([
    ['a text', Buffer.from('<html><script>alert(1)</script></html>'), 415, 'wrong-media-type'],
    ['a picture of another type', Buffer.from('GIF89a\x01\x00\x01\x00\x00\x00\x00;', 'latin1'), 415, 'wrong-media-type'],
    ['half of a photo', null, 422, 'not-possible'],
  ])('refuses %s, whatever it says that it is', async (_, given, status, code) => {
    const bytes = given ?? (await photo()).subarray(0, 400);
    const answer = await send(await begin(bytes), 0, bytes);
    expect([answer.status, answer.body.code]).toEqual([status, code]);
  });

  it('refuses a PNG or WebP that is small as it comes and takes too much memory when it is unpacked', async () => {
    const flat = (width: number) => sharp({ create: { width, height: width, channels: 4, background: '#12345680' } });
    for (const bytes of [await flat(6_000).webp({ effort: 0 }).toBuffer(), await flat(4_500).toColourspace('rgb16').png({ compressionLevel: 1 }).toBuffer()]) {
      expect(bytes.length).toBeLessThan(2 * 1024 * 1024);
      const answer = await tus(test, company.crew.token, 'post', '/v1/uploads', { 'upload-length': String(bytes.length), 'upload-metadata': metadataOf({ sha256: sha256(bytes) }), 'content-type': BYTES }).send(bytes);
      expect([answer.status, answer.body.code]).toEqual([422, 'not-possible']);
      expect(answer.body.detail).toMatch(/^The image takes 1\d\d MiB when it is unpacked; .* at most 128\. Make it smaller, or save it as JPEG\.$/);
    }
  }, 60_000);

  it('refuses a small file that would unfold to more pixels than any camera has', async () => {
    const bytes = await sharp({ create: { width: 9000, height: 9000, channels: 3, background: '#ffffff' }, limitInputPixels: false }).png().toBuffer();
    expect(bytes.length).toBeLessThan(1024 * 1024);
    const answer = await send(await begin(bytes), 0, bytes);
    expect([answer.status, answer.body.code]).toEqual([422, 'not-possible']);
    expect(answer.body.detail).toContain('9000 × 9000 pixels');
  });

  it('refuses files that are too large, before a byte of them has come and after', async () => {
    const announce = (length: number) => tus(test, company.crew.token, 'post', '/v1/uploads', { 'upload-length': String(length), 'upload-metadata': metadataOf({ sha256: sha256(PDF) }) });
    expect((await announce(20 * 1024 * 1024 + 1)).body.code).toBe('body-too-large');
    const address = await begin(PDF);
    const more = await send(address, 0, Buffer.concat([PDF, PDF]));
    expect([more.status, more.body.code]).toEqual([413, 'body-too-large']);
    const long = Buffer.concat([PDF, Buffer.alloc(10 * 1024 * 1024)]);
    const heavy = await tus(test, company.crew.token, 'post', '/v1/uploads', { 'upload-length': String(long.length), 'upload-metadata': metadataOf({ sha256: sha256(long) }), 'content-type': BYTES }).send(long);
    expect([heavy.status, heavy.body.code]).toEqual([422, 'not-possible']);
  });

  it.each([
    ['without the version of the protocol', { 'tus-resumable': '' }, 412, 'protocol-version'],
    ['without a length', { 'upload-length': '' }, 400, 'malformed-request'],
    ['of nothing', { 'upload-length': '0' }, 400, 'invalid-input'],
    ['without the SHA-256 of the file', { 'upload-metadata': metadataOf({ filename: 'a.jpg' }) }, 400, 'invalid-input'],
    ['with metadata that is none', { 'upload-metadata': 'sha256 ***' }, 400, 'malformed-request'],
  ])('refuses to begin %s', async (_, changes, status, code) => {
    const headers = Object.fromEntries(Object.entries({ 'tus-resumable': '1.0.0', 'upload-length': '10', 'upload-metadata': metadataOf({ sha256: sha256(PDF) }), ...changes }).filter(([, value]) => value !== ''));
    const answer = await test.request('post', '/v1/uploads').set({ authorization: `Bearer ${company.crew.token}`, ...headers });
    expect([answer.status, answer.body.code]).toEqual([status, code]);
  });

  it('is nobody else\'s to see, to go on with or to end', async () => {
    const bytes = await photo();
    const address = await begin(bytes);
    const stranger = (await makeTestCompany(test)).crew;
    for (const client of [company.owner, company.crewLead, stranger]) {
      expect((await standing(address, client.token))[0]).toBe(404);
      const answers = [await tus(test, client.token, 'patch', address, { 'upload-offset': '0', 'content-type': BYTES }).send(bytes), await tus(test, client.token, 'delete', address)];
      expect(answers.map(({ status, body }) => [status, body.code])).toEqual([[404, 'not-found'], [404, 'not-found']]);
      expect(await beginUpload(test, client.token, bytes)).not.toBe(address);
    }
    const nobody = await test.request('patch', address).set({ 'tus-resumable': '1.0.0', 'upload-offset': '0', 'content-type': BYTES }).send(bytes);
    expect([nobody.status, nobody.body.code]).toEqual([401, 'not-signed-in']);
  });

  it('ends an upload, and takes away what nobody attached in seven days', async () => {
    const bytes = await photo();
    const ended = await begin(bytes);
    expect((await tus(test, company.crew.token, 'delete', ended)).status).toBe(204);
    expect((await standing(ended))[0]).toBe(404);
    const finished = await company.crew.upload(bytes);
    const open = await begin(await photo());
    await test.sql("UPDATE upload SET created_at = created_at - interval '7 days 1 minute'");
    expect((await standing(open))[0]).toBe(404);
    const again = await begin(bytes);
    expect(again).not.toContain(finished);
    expect(await test.sql('SELECT FROM upload WHERE id = ANY ($1)', [[finished, open.split('/').at(-1)]])).toEqual([]);
    expect(await test.sql("SELECT FROM stored_file WHERE media_type = 'image/jpeg'")).toEqual([]);
  });

  it('holds a file that is here already until what refers to it is written, against whoever takes it away', async () => {
    const bytes = await photo();
    const uploadId = await company.crew.upload(bytes);
    const [file] = await test.sql<{ file_sha256: Buffer }>('SELECT file_sha256 FROM upload WHERE id = $1', [uploadId]);
    const [content] = await test.sql<{ bytes: Buffer }>('SELECT bytes FROM stored_file WHERE sha256 = $1', [file?.file_sha256]);
    const actor = actorOf(company);
    let removed: Promise<unknown> = Promise.resolve();
    await test.app.get(TenantDatabase).write(actor, async (manager) => {
      const sha256 = await test.app.get(FileStore).put(actor, content?.bytes ?? Buffer.alloc(0), 'image/jpeg');
      removed = Promise.resolve(tus(test, company.crew.token, 'delete', `/v1/uploads/${uploadId}`));
      const gone = await Promise.race([removed.then(() => 'gone'), new Promise((resolve) => setTimeout(resolve, 300, 'held'))]);
      expect(gone).toBe('held');
      const upload = { companyId: company.id, id: uuidv7(), personId: company.crew.personId, size: bytes.length, sha256: randomBytes(32), metadata: {}, fileSha256: sha256, fileSize: 1, mediaType: 'image/jpeg' };
      await manager.insert(UploadEntity, upload);
    });
    await removed;
    expect(await test.sql('SELECT FROM stored_file WHERE sha256 = $1', [file?.file_sha256])).toHaveLength(1);
  });

  it('keeps no more than so many bytes of one person that are attached to nothing', async () => {
    const other = await makeTestCompany(test);
    const [bytes, more] = [await photo(), await photo()];
    const uploadId = await other.crew.upload(bytes);
    await test.sql('UPDATE upload SET size = $2 WHERE id = $1', [uploadId, MOST_WAITING_BYTES - 1]);
    const refused = await tus(test, other.crew.token, 'post', '/v1/uploads', { 'upload-length': String(more.length), 'upload-metadata': metadataOf({ sha256: sha256(more) }) });
    expect([refused.status, refused.body.code]).toEqual([409, 'state-conflict']);
    expect(await beginUpload(test, other.crewLead.token, more)).toMatch(/^\/v1\/uploads/);
    await other.crew.post('/v1/attachments', { uploadId, subject: { kind: 'job', id: await makeTestJob(test, other) }, kind: 'photo' }).expect(201);
    expect(await beginUpload(test, other.crew.token, more)).toMatch(/^\/v1\/uploads/);
  });

  it('takes no stream anywhere else', async () => {
    const answer = await test.request('post', '/v1/customers').set({ authorization: `Bearer ${company.owner.token}`, 'content-type': BYTES }).send(PDF);
    expect([answer.status, answer.body.code]).toEqual([415, 'wrong-media-type']);
  });
});
