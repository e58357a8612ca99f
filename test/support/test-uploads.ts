import { createHash } from 'node:crypto';
import sharp from 'sharp';
import type supertest from 'supertest';
import type { AppClient } from './test-app.js';

export const BYTES = 'application/offset+octet-stream';

/** A JPEG that lies on its side and tells where it was taken: 80 × 60 pixels as stored, 60 × 80 upright. */
export async function makePhoto(color = '#446688'): Promise<Buffer> {
  return sharp({ create: { width: 80, height: 60, channels: 3, background: color } })
    .withExif({ IFD0: { Make: 'Invented', Model: 'Pocket' }, IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '42/1 20/1 0/1', GPSLongitudeRef: 'W', GPSLongitude: '83/1 3/1 0/1' } })
    .withMetadata({ orientation: 6 })
    .jpeg()
    .toBuffer();
}

/** The smallest file that is taken for a PDF. */
export const PDF = Buffer.from('%PDF-1.7\n1 0 obj\n<<>>\nendobj\ntrailer\n<<>>\n%%EOF\n');

export function sha256(bytes: Buffer): string {
  return createHash('sha256').update(bytes).digest('hex');
}

export function metadataOf(values: Readonly<Record<string, string>>): string {
  return Object.entries(values).map(([name, value]) => `${name} ${Buffer.from(value).toString('base64')}`).join(',');
}

/** A request of the upload protocol, held against the contract. */
export function tus(test: AppClient, token: string, method: 'post' | 'patch' | 'delete', path: string, headers: Readonly<Record<string, string>> = {}): supertest.Test {
  return test.request(method, path).set({ authorization: `Bearer ${token}`, 'tus-resumable': '1.0.0', ...headers });
}

/** Begins an upload of these bytes without sending any. @returns its address */
export async function beginUpload(test: AppClient, token: string, bytes: Buffer): Promise<string> {
  const answer = await tus(test, token, 'post', '/v1/uploads', { 'upload-length': String(bytes.length), 'upload-metadata': metadataOf({ sha256: sha256(bytes), filename: 'photo.jpg' }) });
  if (answer.status !== 201) throw new Error(`upload: ${answer.text}`);
  return answer.headers['location'] as string;
}

/** Sends the whole file in one request. @returns the id of the upload */
export async function uploadWhole(test: AppClient, token: string, bytes: Buffer): Promise<string> {
  const answer = await tus(test, token, 'post', '/v1/uploads', { 'upload-length': String(bytes.length), 'upload-metadata': metadataOf({ sha256: sha256(bytes) }), 'content-type': BYTES }).send(bytes);
  if (answer.status !== 201) throw new Error(`upload: ${answer.text}`);
  return (answer.headers['location'] as string).split('/').at(-1) ?? '';
}
