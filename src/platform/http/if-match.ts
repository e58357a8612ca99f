import { createParamDecorator, type ExecutionContext } from '@nestjs/common';
import type { FastifyRequest } from 'fastify';
import { Problem } from './problem.js';

/**
 * The version that a change is for, from If-Match.
 * @throws Problem 428 without the header, 412 when it can not be a version of ours
 */
export const IfMatch = createParamDecorator((_: unknown, context: ExecutionContext): number => {
  const header = context.switchToHttp().getRequest<FastifyRequest>().headers['if-match'];
  if (header === undefined) {
    throw new Problem('version-required', 'Read the resource first, and send its ETag in the If-Match header, so that no change of somebody else is lost.');
  }
  // A weak tag never matches If-Match (RFC 9110, 13.1.1), and "*" would overwrite whatever is there.
  // What some tags say behind the version changes without the resource (taggedBySaying).
  const version = /^"(\d{1,9})(?:\.[\w-]{22})?"$/.exec(header.trim())?.[1];
  if (version === undefined) throw new Problem('stale-version', `If-Match is ${header}, which is no ETag of this resource. Read it again, and send its ETag, such as "3".`);
  return Number(version);
});
