import { request as open } from 'node:http';
import type { WireRequest } from '../../../examples/crew-client/index.js';

const UNDER_WAY_MS = 15;

/** Sends the head of a request and half of its body, and breaks the connection. @returns when that is done */
export function cutRequest(url: string, { method, path, headers, body = '' }: WireRequest): Promise<void> {
  const bytes = Buffer.from(body as Uint8Array);
  return new Promise((resolve) => {
    const sent = open(url + path, { method, headers: { ...headers, 'content-length': bytes.length } });
    sent.on('error', () => undefined).on('close', resolve);
    sent.write(bytes.subarray(0, bytes.length / 2));
    setTimeout(() => sent.destroy(), UNDER_WAY_MS);
  });
}
