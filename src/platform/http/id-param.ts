import { createParamDecorator, type ExecutionContext } from '@nestjs/common';
import type { FastifyRequest } from 'fastify';
import { isUuid } from './fields/ids.js';
import { Problem } from './problem.js';

/**
 * An id from the path, in lower case.
 * @throws Problem 404 for what is no id at all: there can be no such thing
 */
export const IdParam = createParamDecorator((name: string | undefined, context: ExecutionContext): string => {
  const params = context.switchToHttp().getRequest<FastifyRequest>().params as Record<string, string | undefined>;
  const value = params[name ?? 'id'];
  if (!isUuid(value)) throw new Problem('not-found', 'The address holds no id. Ids are UUIDs such as 0199c3a2-5b1e-7c44-9d0a-3f6b1c2d4e5f.');
  return value.toLowerCase();
});
