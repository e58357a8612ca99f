import { Readable } from 'node:stream';
import { applyDecorators, Get } from '@nestjs/common';
import { ApiHeader, ApiParam, ApiResponse } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { common, Revalidated, type RouteOptions } from '../../platform/http/api.js';
import { byteRange } from '../../platform/http/byte-range.js';
import { hasTag } from '../../platform/http/reply.js';
import type { OpenFile } from './attachments.service.js';

const TAG = { ETag: { description: 'The SHA-256 of all bytes; send it in If-None-Match, and with Range in If-Range.', schema: { type: 'string' as const } } };

/** `GET /attachments/{id}/content`: bytes, of one of these types; all of them or a part. */
export function ContentRoute(options: RouteOptions & { readonly path: string; readonly types: readonly string[] }): MethodDecorator {
  const content = Object.fromEntries(options.types.map((type) => [type, { schema: { type: 'string' as const, format: 'binary' } }]));
  const range = { description: 'Which bytes these are, and how many there are in all.', schema: { type: 'string' as const } };
  return applyDecorators(
    Get(options.path),
    common(options, ['not-found', 'range-not-satisfiable']),
    ApiParam({ name: 'id', schema: { type: 'string', format: 'uuid' }, description: 'The id.' }),
    ApiHeader({ name: 'Range', required: false, description: 'A part of the bytes, to go on after a lost connection: `bytes=1048576-`.', schema: { type: 'string' } }),
    ApiHeader({ name: 'If-Range', required: false, description: 'The ETag of what the client has the beginning of; if it is another one, all bytes are sent.', schema: { type: 'string' } }),
    ApiResponse({ status: 200, description: 'The bytes.', content, headers: TAG }),
    ApiResponse({ status: 206, description: 'The part of the bytes.', content, headers: { ...TAG, 'Content-Range': range } }),
    Revalidated(),
  );
}

/**
 * Sends what somebody uploaded. The client may keep it but asks each time whether it still may; a browser takes it for
 * nothing but what it is, and runs nothing in it.
 * @throws Problem 416 for a part that is not there
 */
export function sendContent(request: FastifyRequest, reply: FastifyReply, file: OpenFile, id: string): void {
  const { headers, method } = request;
  const etag = `"${file.sha256}"`;
  void reply.headers({ etag, 'cache-control': 'private, no-cache', 'accept-ranges': 'bytes', 'x-content-type-options': 'nosniff', 'content-security-policy': "default-src 'none'; sandbox" });
  if (hasTag(headers['if-none-match'], etag)) {
    void reply.status(304).send();
    return;
  }
  // Part of one file after the beginning of another would be neither; If-Range compares strongly (RFC 9110, 13.1.5).
  const mayBePart = method === 'GET' && [undefined, etag].includes(headers['if-range'] as string | undefined);
  const part = mayBePart ? byteRange(headers.range, file.size) : null;
  const { first, last } = part ?? { first: 0, last: file.size - 1 };
  if (part !== null) void reply.status(206).header('content-range', `bytes ${first}-${last}/${file.size}`);
  const ending = file.mediaType.split('/')[1] ?? '';
  const disposition = file.mediaType.startsWith('image/') ? 'inline' : 'attachment';
  void reply
    .headers({ 'content-type': file.mediaType, 'content-length': String(last + 1 - first), 'content-disposition': `${disposition}; filename="${id}.${ending}"` })
    .send(Readable.from(method === 'HEAD' ? [] : file.read(first, last)));
}
