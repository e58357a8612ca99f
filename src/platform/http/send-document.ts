import { createHash } from 'node:crypto';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { hasTag } from './reply.js';

/** Sends a stored PDF, or 304 to a client that has these very bytes. `name` is the file name without its ending, in ASCII. */
export function sendPdf(request: FastifyRequest, reply: FastifyReply, bytes: Buffer, name: string): void {
  const etag = `"${createHash('sha256').update(bytes).digest('hex')}"`;
  void reply.header('etag', etag).header('cache-control', 'private, no-cache');
  if (hasTag(request.headers['if-none-match'], etag)) {
    void reply.status(304).send();
    return;
  }
  void reply
    .header('content-type', 'application/pdf')
    .header('content-disposition', `inline; filename="${name}.pdf"`)
    .header('x-content-type-options', 'nosniff')
    .send(bytes);
}
