import { createHash } from 'node:crypto';
import { type CallHandler, type ExecutionContext, Injectable, type NestInterceptor } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { map, type Observable } from 'rxjs';
import type { Page } from './lists.js';

/** An answer with more to say than its body: status and headers. */
export class Reply<T> {
  constructor(
    readonly body: T,
    readonly status: number | null,
    readonly headers: Readonly<Record<string, string>>,
  ) {}
}

export function etagOf(version: number): string {
  return `"${version}"`;
}

/** A resource as it stands, with its version as ETag. */
export function tagged<T>(body: T, version: number): Reply<T> {
  return new Reply(body, null, { etag: etagOf(version) });
}

/**
 * An answer put together from many rows, which has no version: its tag is that of what it says; a weak one, since the
 * same is sent compressed and plain.
 */
export function taggedByContent<T>(body: T, headers: Readonly<Record<string, string>>): Reply<T> {
  return new Reply(body, null, { ...headers, etag: `W/"${digestOf(body)}"` });
}

/**
 * A resource whose answer also says what changes without it, such as warnings. Its tag is the version with a digest of
 * what is said, so that a 304 hides no change; If-Match counts by the version alone, since nothing else can be lost.
 */
export function taggedBySaying<T>(body: T, version: number): Reply<T> {
  return new Reply(body, null, { etag: `"${version}.${digestOf(body)}"` });
}

function digestOf(body: unknown): string {
  const said = typeof body === 'string' ? body : JSON.stringify(body);
  return createHash('sha256').update(said).digest('base64url').slice(0, 22);
}

/** The answer to a create: 201 when this request made it, 200 when an earlier one with the same id and body did. */
export function made<T>(body: T, version: number, created: boolean): Reply<T> {
  return new Reply(body, created ? 201 : 200, { etag: etagOf(version) });
}

/** Applies what a Reply says, answers 304 to a client that has the version already, and links lists. */
@Injectable()
export class ReplyInterceptor implements NestInterceptor {
  intercept(context: ExecutionContext, next: CallHandler): Observable<unknown> {
    const http = context.switchToHttp();
    const request = http.getRequest<FastifyRequest>();
    const response = http.getResponse<FastifyReply>();
    return next.handle().pipe(
      map((value: unknown): unknown => {
        if (value instanceof Reply) {
          if (value.status !== null) void response.status(value.status);
          void response.headers(value.headers);
          const etag = value.headers['etag'];
          if (request.method === 'GET' && etag !== undefined && hasTag(request.headers['if-none-match'], etag)) {
            void response.status(304);
            return undefined;
          }
          return value.body;
        }
        if (isPage(value) && value.nextCursor !== null) void response.header('link', nextLink(request, value.nextCursor));
        return value;
      }),
    );
  }
}

/** Whether If-None-Match names this tag: it compares weakly (RFC 9110, 13.1.2). */
export function hasTag(header: string | undefined, etag: string): boolean {
  if (header === undefined) return false;
  return header.trim() === '*' || header.split(',').some((tag) => tag.trim().replace(/^W\//, '') === etag.replace(/^W\//, ''));
}

function isPage(value: unknown): value is Page<unknown> {
  return typeof value === 'object' && value !== null && 'items' in value && 'nextCursor' in value;
}

function nextLink(request: FastifyRequest, cursor: string): string {
  const url = new URL(request.url, 'http://here');
  url.searchParams.set('cursor', cursor);
  return `<${url.pathname}${url.search}>; rel="next"`;
}
