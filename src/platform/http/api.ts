import { applyDecorators, Delete, Get, HttpCode, Patch, Post, type Type, UseInterceptors } from '@nestjs/common';
import { ApiBearerAuth, ApiBody, ApiConsumes, ApiExtension, ApiExtraModels, ApiHeader, ApiOperation, ApiParam, ApiResponse, getSchemaPath } from '@nestjs/swagger';
import type { Role } from '../auth/actor.js';
import { Allow } from '../auth/allow.js';
import { NoFields } from './no-fields.js';
import { ProblemView } from './problem.view.js';
import { PROBLEMS, type ProblemCode } from './problem.js';

export interface RouteOptions {
  readonly roles: readonly Role[];
  readonly summary: string;
  readonly description?: string;
  /** The problems of this route beyond those that every signed-in route can have. */
  readonly problems?: readonly ProblemCode[];
}

const SIGNED_IN: readonly ProblemCode[] = ['not-signed-in', 'session-ended', 'device-revoked', 'not-allowed', 'unexpected', 'unavailable'];
const WITH_BODY: readonly ProblemCode[] = ['malformed-request', 'invalid-input', 'body-too-large', 'wrong-media-type', 'no-such-reference', 'not-possible', 'already-there', 'state-conflict'];

/** One documented answer for each status, naming the codes that it can carry. */
export function ApiProblems(codes: readonly ProblemCode[]): MethodDecorator & ClassDecorator {
  const byStatus = new Map<number, ProblemCode[]>();
  for (const code of new Set(codes)) byStatus.set(PROBLEMS[code].status, [...(byStatus.get(PROBLEMS[code].status) ?? []), code]);
  return applyDecorators(
    ApiExtraModels(ProblemView),
    ...[...byStatus].map(([status, ofStatus]) =>
      ApiResponse({ status, description: ofStatus.map((code) => `\`${code}\`: ${PROBLEMS[code].title}.`).join(' '), content: { 'application/problem+json': { schema: { $ref: getSchemaPath(ProblemView) } } } }),
    ),
  );
}

/** What every signed-in route has: who may call it, its documentation, its problems. */
export function common(options: RouteOptions, codes: readonly ProblemCode[]): MethodDecorator {
  return applyDecorators(
    Allow(options.roles),
    ApiBearerAuth(),
    ApiOperation({ summary: options.summary, description: [options.description, `Roles: ${options.roles.join(', ')}.`].filter(Boolean).join('\n\n') }),
    ApiProblems([...SIGNED_IN, ...codes, ...(options.problems ?? [])]),
  );
}

/** What a read has that is asked for again with the ETag of the answer before: a client made from the contract must be able to send it. */
export function Revalidated(): MethodDecorator {
  return applyDecorators(
    ApiHeader({ name: 'If-None-Match', required: false, description: 'An ETag that you have: while it still stands, the answer is 304 without a body.', schema: { type: 'string' } }),
    ApiResponse({ status: 304, description: 'Unchanged since the version in If-None-Match.' }),
  );
}

const ETAG_HEADER = { ETag: { description: 'The version of the resource; send it in If-Match to change it.', schema: { type: 'string' as const } } };

/** `POST /things`, or `POST /things/{id}/parts`: makes one, once. */
export function CreateRoute(view: Type, options: RouteOptions & { readonly path?: string }): MethodDecorator {
  const path = options.path ?? '';
  return applyDecorators(
    Post(path),
    common(options, [...WITH_BODY, path.includes(':') ? 'not-found' : 'id-taken']),
    IdParams(path),
    ApiResponse({ status: 201, description: 'Made.', type: view, headers: ETAG_HEADER }),
    ApiResponse({ status: 200, description: 'The same was sent before; this is what that made.', type: view, headers: ETAG_HEADER }),
  );
}

/** `GET /things`: a page of them, newest first. */
export function ListRoute(view: Type, options: RouteOptions & { readonly path?: string }): MethodDecorator {
  const path = options.path ?? '';
  return applyDecorators(
    Get(path),
    common(options, path.includes(':') ? ['not-found', 'invalid-input'] : ['invalid-input']),
    IdParams(path),
    ApiExtraModels(view),
    ApiResponse({
      status: 200,
      description: 'A page, newest first. `Link` with rel="next" leads to the next one (RFC 8288).',
      schema: {
        type: 'object',
        required: ['items', 'nextCursor'],
        additionalProperties: false,
        properties: {
          items: { type: 'array', maxItems: 200, items: { $ref: getSchemaPath(view) }, description: 'The page.' },
          nextCursor: { type: 'string', nullable: true, description: 'The `cursor` of the next page, or null on the last one.' },
        },
      },
    }),
  );
}

/** `GET /things/{id}`, or another read of one thing. */
export function ReadRoute(view: Type, options: RouteOptions & { readonly path?: string }): MethodDecorator {
  const path = options.path ?? ':id';
  return applyDecorators(
    Get(path),
    common(options, path.includes(':') ? ['not-found', 'invalid-input'] : []),
    IdParams(path),
    ApiResponse({ status: 200, description: 'As it stands.', type: view, headers: ETAG_HEADER }),
    Revalidated(),
  );
}

/** `PATCH /things/{id}`: a JSON merge patch (RFC 7396) on a version. */
export function ChangeRoute(input: Type, view: Type, options: RouteOptions & { readonly path?: string }): MethodDecorator {
  const path = options.path ?? ':id';
  return applyDecorators(
    Patch(path),
    common(options, [...WITH_BODY, 'not-found', 'stale-version', 'version-required']),
    IdParams(path),
    ApiHeader({ name: 'If-Match', required: true, description: 'The ETag that the change is for.', schema: { type: 'string', example: '"1"' } }),
    ApiExtraModels(input),
    ApiConsumes('application/merge-patch+json'),
    ApiBody({ required: true, description: 'The fields to change; null takes an optional field away. The result is checked as a whole.', schema: { $ref: `${getSchemaPath(input)}Patch` } }),
    ApiExtension('x-patch-of', getSchemaPath(input).split('/').at(-1)),
    ApiResponse({ status: 200, description: 'Changed.', type: view, headers: ETAG_HEADER }),
  );
}

/** `POST /things/{id}/verb`: a change of state that may be repeated. A bodyless one refuses every field. */
export function ActionRoute(view: Type, options: RouteOptions & { readonly path: string; readonly status?: 200 | 201; readonly bodyless?: boolean }): MethodDecorator {
  return applyDecorators(
    Post(options.path),
    HttpCode(options.status ?? 200),
    ...(options.bodyless === true ? [UseInterceptors(NoFields)] : []),
    common(options, [...WITH_BODY, 'not-found']),
    IdParams(options.path),
    ApiResponse({ status: options.status ?? 200, description: 'Done, now or before.', type: view, headers: ETAG_HEADER }),
  );
}

/** `POST /calculations/name`: computes an answer and keeps nothing. */
export function ComputeRoute(input: Type, view: Type, options: RouteOptions & { readonly path: string }): MethodDecorator {
  return applyDecorators(
    Post(options.path),
    HttpCode(200),
    common(options, ['malformed-request', 'invalid-input', 'body-too-large', 'wrong-media-type', 'not-possible']),
    ApiBody({ type: input, required: true }),
    ApiResponse({ status: 200, description: 'Computed; nothing was stored.', type: view }),
  );
}

/** A route that ends something and answers without a body. */
export function EndRoute(options: RouteOptions & { readonly path: string }): MethodDecorator {
  return applyDecorators(Delete(options.path), HttpCode(204), common(options, []), ApiResponse({ status: 204, description: 'Ended.' }));
}

/** `GET /things/{id}/document`: the PDF, byte for byte as it was issued. */
export function DocumentRoute(options: RouteOptions & { readonly path: string }): MethodDecorator {
  return applyDecorators(
    Get(options.path),
    common(options, ['not-found', 'state-conflict', 'invalid-input']),
    IdParams(options.path),
    ApiResponse({ status: 200, description: 'The document.', content: { 'application/pdf': { schema: { type: 'string', format: 'binary' } } } }),
    Revalidated(),
  );
}

function IdParams(path: string): MethodDecorator {
  const names = [...path.matchAll(/:(\w+)/g)].map((match) => match[1] ?? '');
  return applyDecorators(...names.map((name) => ApiParam({ name, schema: name === 'revision' ? { type: 'integer', minimum: 1 } : { type: 'string', format: 'uuid' }, description: name === 'id' ? 'The id.' : `The ${name}.` })));
}
