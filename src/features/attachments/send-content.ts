import { applyDecorators, Get } from '@nestjs/common';
import { ApiParam, ApiResponse } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { common, type RouteOptions } from '../../platform/http/api.js';
import type { OpenFile } from './attachments.service.js';

/** `GET /attachments/{id}/content`: bytes, of one of these types. */
export function ContentRoute(options: RouteOptions & { readonly path: string; readonly types: readonly string[] }): MethodDecorator {
  const content = Object.fromEntries(options.types.map((type) => [type, { schema: { type: 'string' as const, format: 'binary' } }]));
  return applyDecorators(
    Get(options.path),
    common(options, ['not-found']),
    ApiParam({ name: 'id', schema: { type: 'string', format: 'uuid' }, description: 'The id.' }),
    ApiResponse({ status: 200, description: 'The bytes.', content, headers: { ETag: { description: 'The SHA-256 of the bytes; send it in If-None-Match.', schema: { type: 'string' } } } }),
    ApiResponse({ status: 304, description: 'The client has these bytes.' }),
  );
}

/**
 * Sends what somebody uploaded. The client may keep it but asks each time whether it still may; a browser takes it for
 * nothing but what it is, and runs nothing in it.
 */
export async function sendContent(request: FastifyRequest, reply: FastifyReply, file: OpenFile, id: string): Promise<void> {
  const etag = `"${file.sha256}"`;
  void reply.headers({ etag, 'cache-control': 'private, no-cache', 'x-content-type-options': 'nosniff', 'content-security-policy': "default-src 'none'; sandbox" });
  if (request.headers['if-none-match'] === etag) {
    void reply.status(304).send();
    return;
  }
  const bytes = await file.load();
  const ending = file.mediaType.split('/')[1] ?? '';
  const disposition = file.mediaType.startsWith('image/') ? 'inline' : 'attachment';
  void reply.header('content-type', file.mediaType).header('content-disposition', `${disposition}; filename="${id}.${ending}"`).send(bytes);
}
