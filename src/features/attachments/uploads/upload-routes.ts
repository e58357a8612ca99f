import { applyDecorators, Delete, Head, Options, Patch, Post } from '@nestjs/common';
import { ApiBody, ApiConsumes, ApiHeader, ApiParam, ApiResponse } from '@nestjs/swagger';
import { common, type RouteOptions } from '../../../platform/http/api.js';
import type { ProblemCode } from '../../../platform/http/problem.js';

const BYTES = 'application/offset+octet-stream';
const STATUSES: readonly ProblemCode[] = ['malformed-request', 'protocol-version', 'invalid-input', 'wrong-media-type'];
const FINISHING: readonly ProblemCode[] = ['body-too-large', 'offset-conflict', 'state-conflict', 'checksum-mismatch', 'not-possible', 'no-such-reference'];
const ONE: readonly ProblemCode[] = ['not-found', 'upload-expired'];

const header = (description: string, type: 'string' | 'integer' = 'string') => ({ description, schema: { type } });
const RESUMABLE = ApiHeader({ name: 'Tus-Resumable', required: true, description: 'The version of the protocol.', schema: { type: 'string', enum: ['1.0.0'] } });
const CHECKSUM = ApiHeader({ name: 'Upload-Checksum', required: false, description: 'The checksum of this request\'s bytes: `sha256` or `sha1`, a space, the checksum in Base64. Bytes with another one are not kept.', schema: { type: 'string' } });
const ID = ApiParam({ name: 'id', schema: { type: 'string', format: 'uuid' }, description: 'The upload.' });
const OFFSET = { 'Upload-Offset': header('The number of bytes that are here.', 'integer') };

const body = (required: boolean): MethodDecorator => applyDecorators(ApiConsumes(BYTES), ApiBody({ required, description: 'The next bytes of the file.', schema: { type: 'string', format: 'binary' } }));

/** `OPTIONS /v1/uploads`: what the service can. */
export function AskRoute(options: RouteOptions): MethodDecorator {
  return applyDecorators(Options(), common(options, []), ApiResponse({ status: 204, description: 'In the headers Tus-Version, Tus-Extension, Tus-Max-Size and Tus-Checksum-Algorithm.' }));
}

/** `POST /v1/uploads`: begins one, with its first bytes or none. */
export function BeginRoute(options: RouteOptions): MethodDecorator {
  return applyDecorators(
    Post(),
    common(options, [...STATUSES, ...FINISHING]),
    RESUMABLE,
    CHECKSUM,
    ApiHeader({ name: 'Upload-Length', required: true, description: 'The number of bytes of the whole file.', schema: { type: 'integer' } }),
    ApiHeader({ name: 'Upload-Metadata', required: true, description: '`sha256` and the SHA-256 of the whole file in hexadecimal digits; beside it what the client likes, such as `filename`. Names as they are, values in Base64, separated by commas.', schema: { type: 'string' } }),
    body(false),
    ApiResponse({ status: 201, description: 'Begun, or begun before by the same person with the same bytes: ask with HEAD where it stands.', headers: { 'Upload-Offset': header('The number of bytes that are here; only when bytes came with the request.', 'integer'), Location: header('The address of the upload: a path of this service, whose last part is the `uploadId` of an attachment.'), 'Upload-Expires': header('When it is taken away if it is not finished.') } }),
  );
}

/** `HEAD /v1/uploads/{id}`: where it stands. */
export function StandingRoute(options: RouteOptions): MethodDecorator {
  return applyDecorators(Head(':id'), common(options, [...STATUSES, ...ONE]), RESUMABLE, ID, ApiResponse({ status: 200, description: 'Where it stands.', headers: { ...OFFSET, 'Upload-Length': header('The number of bytes of the whole file.', 'integer') } }));
}

/** `PATCH /v1/uploads/{id}`: the next bytes. */
export function ContinueRoute(options: RouteOptions): MethodDecorator {
  return applyDecorators(
    Patch(':id'),
    common(options, [...STATUSES, ...ONE, ...FINISHING]),
    RESUMABLE,
    CHECKSUM,
    ApiHeader({ name: 'Upload-Offset', required: true, description: 'Where these bytes begin: where the upload stands.', schema: { type: 'integer' } }),
    ID,
    body(true),
    ApiResponse({ status: 204, description: 'Kept. After the last bytes the file was checked too, and can be attached.', headers: OFFSET }),
  );
}

/** `DELETE /v1/uploads/{id}`: gives it up. */
export function GiveUpRoute(options: RouteOptions): MethodDecorator {
  return applyDecorators(Delete(':id'), common(options, [...STATUSES, ...ONE]), RESUMABLE, ID, ApiResponse({ status: 204, description: 'Taken away. What was attached stays.' }));
}
