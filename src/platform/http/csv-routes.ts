import { applyDecorators, Get, HttpCode, Post, type Type } from '@nestjs/common';
import { ApiBody, ApiConsumes, ApiResponse } from '@nestjs/swagger';
import { common, type RouteOptions } from './api.js';

type TableRoute = RouteOptions & { readonly path: string };

/** `GET /things/export`: all of them as CSV. */
export function ExportRoute(options: TableRoute): MethodDecorator {
  return applyDecorators(
    Get(options.path),
    common(options, []),
    ApiResponse({ status: 200, description: 'The table.', content: { 'text/csv': { schema: { type: 'string' } } } }),
  );
}

/** `POST /things/import`: takes a CSV table and reports on every row. */
export function ImportRoute(report: Type, options: TableRoute): MethodDecorator {
  return applyDecorators(
    Post(options.path),
    HttpCode(200),
    common(options, ['malformed-request', 'invalid-input', 'body-too-large', 'wrong-media-type']),
    ApiConsumes('text/csv'),
    ApiBody({ required: true, description: 'The table, with its columns named in the first row.', schema: { type: 'string' } }),
    ApiResponse({ status: 200, description: 'Read; the report says what became of each row.', type: report }),
  );
}
