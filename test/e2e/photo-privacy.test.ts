import ExifReader from 'exifreader';
import { v7 as uuidv7 } from 'uuid';
import sharp, { type Sharp } from 'sharp';
import { HEIC_PHOTO } from '../support/heic-photo.js';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { makeTestCompany, type TestCompany } from '../support/test-company.js';
import { makeTestJob } from '../support/test-job.js';
import { beginUpload, BYTES, sha256, tus } from '../support/test-uploads.js';

const XMP = '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description rdf:about="" xmlns:exif="http://ns.adobe.com/exif/1.0/" exif:GPSLatitude="42,20.0N" exif:GPSLongitude="83,3.0W"/></rdf:RDF></x:xmpmeta>';
const PAGE = '<html><script>alert(1)</script></html>';
const TELLTALES = ['Exif', 'GPS', 'xmpmeta', 'Invented', '83,3.0W', 'script'];
/** What a reader may find: how large the picture is, and its colors. */
const HARMLESS = ['file', 'jfif', 'icc', 'pngFile', 'png', 'riff'];

/** What another library than the service's finds in a file. */
function told(bytes: Buffer): { gps: unknown; kinds: string[] } {
  const tags = ExifReader.load(bytes, { expanded: true });
  return { gps: tags.gps, kinds: Object.keys(tags) };
}

describe('photos', () => {
  let test: TestApp;
  let company: TestCompany;
  let keeping: TestCompany;

  beforeAll(async () => {
    test = await startTestApp();
    company = await makeTestCompany(test);
    keeping = await makeTestCompany(test, { keepPhotoLocation: true });
  });
  afterAll(() => test.close());

  const attach = async (to: TestCompany, bytes: Buffer) => to.crew.post('/v1/attachments', { id: uuidv7(), uploadId: await to.crew.upload(bytes), subject: { kind: 'job', id: await makeTestJob(test, to) }, kind: 'photo' });
  const bytesOf = async (of: TestCompany, id: string, what = 'content') => (await test.sql<{ bytes: Buffer }>(`SELECT bytes FROM stored_file f JOIN attachment a ON a.company_id = f.company_id AND f.sha256 = ${what === 'content' ? 'a.file_sha256' : 'a.thumbnail_sha256'} WHERE a.id = $1 AND a.company_id = $2`, [id, of.id]))[0]?.bytes ?? Buffer.alloc(0);
  const telling = (encode: (image: Sharp) => Sharp): Promise<Buffer> =>
    encode(
      sharp({ create: { width: 120, height: 80, channels: 3, background: '#446688' } })
        .withExif({ IFD0: { Make: 'Invented' }, IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '42/1 20/1 0/1', GPSLongitudeRef: 'W', GPSLongitude: '83/1 3/1 0/1' } })
        .withXmp(XMP),
    ).toBuffer();

  it.each([
    ['JPEG', (image: Sharp) => image.jpeg()],
    ['PNG', (image: Sharp) => image.png()],
    ['WebP', (image: Sharp) => image.webp()],
  ])('tell nothing of where they were taken as %s, by the eyes of another library', async (_, encode) => {
    // With a page behind the picture, for a browser that takes it for one.
    const bytes = Buffer.concat([await telling(encode), Buffer.from(PAGE)]);
    expect(told(bytes).gps).toMatchObject({ Longitude: -83.05 });
    const { body } = await attach(company, bytes);
    for (const what of ['content', 'thumbnail']) {
      const kept = await bytesOf(company, body.id, what);
      expect(told(kept).gps).toBeUndefined();
      expect(told(kept).kinds.filter((kind) => !HARMLESS.includes(kind))).toEqual([]);
      expect(TELLTALES.filter((word) => kept.includes(word))).toEqual([]);
    }
  });

  it('come out of HEIC as a JPEG that is upright, has its colors and tells nothing else', async () => {
    expect(told(HEIC_PHOTO).gps).toMatchObject({ Longitude: -83.05 });
    const { status, body } = await attach(company, HEIC_PHOTO);
    expect([status, body.mediaType, body.width, body.height, body.hasThumbnail]).toEqual([201, 'image/jpeg', 64, 96, true]);
    const kept = await bytesOf(company, body.id);
    expect([sha256(kept), kept.length]).toEqual([body.sha256, body.size]);
    expect(told(kept).gps).toBeUndefined();
    expect(TELLTALES.filter((word) => kept.includes(word))).toEqual([]);
    const { icc, width, height } = await sharp(kept).metadata();
    expect([width, height]).toEqual([64, 96]);
    expect(icc?.equals((await sharp(HEIC_PHOTO).metadata()).icc ?? Buffer.alloc(0))).toBe(true);
    // The red square is at the top right. In Display P3 the red of sRGB is about (234, 51, 35).
    const { data } = await sharp(kept).extract({ left: 59, top: 4, width: 1, height: 1 }).toColourspace('srgb').raw().toBuffer({ resolveWithObject: true });
    expect([Number(data[0]) > 220, Number(data[1]) < 60, Number(data[2]) < 60]).toEqual([true, true, true]);
    const thumbnail = await sharp(await bytesOf(company, body.id, 'thumbnail')).metadata();
    expect([thumbnail.format, thumbnail.width, thumbnail.height]).toEqual(['jpeg', 64, 96]);
  });

  it('stay HEIC, byte for byte, where the company keeps locations', async () => {
    const { status, body } = await attach(keeping, HEIC_PHOTO);
    expect([status, body.mediaType, body.sha256, body.size, body.width, body.height, body.hasThumbnail]).toEqual([201, 'image/heic', sha256(HEIC_PHOTO), HEIC_PHOTO.length, 64, 96, true]);
    expect((await keeping.owner.get(`/v1/attachments/${body.id}/content`)).headers).toMatchObject({ 'content-type': 'image/heic', 'x-content-type-options': 'nosniff' });
    expect((await sharp(await bytesOf(keeping, body.id, 'thumbnail')).metadata()).format).toBe('jpeg');
  });

  it.each([
    ['half of its file', () => HEIC_PHOTO.subarray(0, HEIC_PHOTO.length / 2)],
    ['nothing but its name', () => HEIC_PHOTO.subarray(0, 40)],
    ['a size of its own invention', () => withSize(60_000, 60_000)],
  ])('are refused as HEIC with %s, and the service goes on', async (_, make) => {
    const bytes = Buffer.concat([make()]);
    const answer = await tus(test, company.crew.token, 'patch', await beginUpload(test, company.crew.token, bytes), { 'upload-offset': '0', 'content-type': BYTES }).send(bytes);
    expect([answer.status, answer.body.code]).toEqual([422, 'not-possible']);
    expect((await attach(company, HEIC_PHOTO)).status).toBe(201);
  });
});

/** The photo with another size in its `ispe` box (ISO/IEC 23008-12, 6.5.3): after its name four bytes, then width and height. */
function withSize(width: number, height: number): Buffer {
  const bytes = Buffer.from(HEIC_PHOTO);
  const at = bytes.indexOf('ispe') + 8;
  bytes.writeUInt32BE(width, at);
  bytes.writeUInt32BE(height, at + 4);
  return bytes;
}
