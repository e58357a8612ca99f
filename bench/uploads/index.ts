import { createHash } from 'node:crypto';
import pg from 'pg';
import sharp from 'sharp';
import { createApp } from '../../src/create-app.js';
import type { Provisioned } from '../../src/platform/database/provision.js';
import { acceptSimpleWork } from '../../test/support/accepted-work.js';
import { appClient } from '../../test/support/test-app.js';
import { makeTestCompany } from '../../test/support/test-company.js';
import { type Measurement, median } from '../measure.js';
import { withDatabase } from '../service.js';
import { photos } from './photos.js';

const ROUNDS = 7;
const WARM_UP = 2;

interface World {
  readonly token: string;
  readonly jobId: string;
}

/**
 * A photo from its first byte to its place at the job: begun, sent, cleaned, with its thumbnail, stored, attached.
 * Beside it what can't be spared: the image library's work on the same bytes, and two inserts of what comes of it.
 */
export function benchUploads(): Promise<Measurement[]> {
  return withDatabase(async ({ database, ownerUrl, startService }) => {
    const world = await makeWorld(database);
    const { url } = await startService();
    const bare = new pg.Client({ connectionString: ownerUrl });
    await bare.connect();
    await bare.query('CREATE TABLE bare_photo (sha256 bytea PRIMARY KEY, bytes bytea NOT NULL)');
    const [mine, other]: [number[], number[]] = [[], []];
    const taken = await photos(ROUNDS + WARM_UP);
    for (const [round, photo] of taken.entries()) {
      const own = await timed(() => send(photo, world, url));
      const yardstick = await timed(() => keepBare(photo, bare));
      if (round < WARM_UP) continue;
      mine.push(own);
      other.push(yardstick);
    }
    await bare.end();
    const [ours, yardstick] = [median(mine), median(other)];
    const size = (median(taken.map(({ length }) => length)) / 1e6).toFixed(1);
    return [{ name: `photo of 12 million pixels and ${size} MB, sent, cleaned and attached`, ours, yardstick, ratio: ours / yardstick, unit: 'ms', target: 'none', met: true }];
  });
}

async function makeWorld(database: Provisioned): Promise<World> {
  const app = await createApp(database, 'silent');
  await app.listen(0, '127.0.0.1');
  const company = await makeTestCompany(appClient(app, (await app.getUrl()).replace('[::1]', '127.0.0.1')));
  const { jobId } = await acceptSimpleWork(company, '900.00');
  await app.close();
  return { token: company.crewLead.token, jobId };
}

async function send(photo: Buffer, { token, jobId }: World, url: string): Promise<void> {
  const signedIn = { authorization: `Bearer ${token}` };
  const protocol = { ...signedIn, 'tus-resumable': '1.0.0' };
  const sha256 = Buffer.from(createHash('sha256').update(photo).digest('hex')).toString('base64');
  const begun = await ask(`${url}/v1/uploads`, { method: 'POST', headers: { ...protocol, 'upload-length': String(photo.length), 'upload-metadata': `sha256 ${sha256}` } });
  const uploadId = begun.headers.get('location')?.split('/').at(-1) ?? '';
  await ask(`${url}/v1/uploads/${uploadId}`, { method: 'PATCH', headers: { ...protocol, 'upload-offset': '0', 'content-type': 'application/offset+octet-stream' }, body: new Uint8Array(photo) });
  await ask(`${url}/v1/attachments`, { method: 'POST', headers: { ...signedIn, 'content-type': 'application/json' }, body: JSON.stringify({ uploadId, subject: { kind: 'job', id: jobId }, kind: 'photo' }) });
}

async function ask(url: string, request: RequestInit): Promise<Response> {
  const answer = await fetch(url, request);
  const text = await answer.text();
  if (!answer.ok) throw new Error(`${request.method} ${url}: ${answer.status} ${text}`);
  return answer;
}

async function keepBare(photo: Buffer, bare: pg.Client): Promise<void> {
  const thumbnail = await sharp(photo).autoOrient().resize(320, 320, { fit: 'inside' }).jpeg({ quality: 75 }).toBuffer();
  const kept = await sharp(photo).autoOrient().keepIccProfile().jpeg({ quality: 88, optimiseCoding: false }).toBuffer();
  for (const bytes of [kept, thumbnail]) await bare.query('INSERT INTO bare_photo VALUES ($1, $2) ON CONFLICT DO NOTHING', [createHash('sha256').update(bytes).digest(), bytes]);
}

async function timed(work: () => Promise<void>): Promise<number> {
  const start = performance.now();
  await work();
  return performance.now() - start;
}
