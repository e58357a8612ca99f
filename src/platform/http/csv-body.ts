import type { FastifyInstance, FastifyRequest } from 'fastify';
import { Problem } from './problem.js';
import { invalidInput } from './problems.js';

/** The bytes of a body of the type text/csv. */
class CsvBody {
  constructor(readonly bytes: Buffer) {}
}

/**
 * Lets the route at this address take text/csv, with the body limit of all routes. Every other route goes on to refuse
 * it with 415: their checks are for JSON, and a table would reach them as an object of unknown fields.
 */
export function acceptCsvAt(fastify: FastifyInstance, address: string): void {
  fastify.addContentTypeParser('text/csv', { parseAs: 'buffer' }, (request, body, done) => {
    if (request.routeOptions.url === address) done(null, new CsvBody(body as Buffer));
    else done(Object.assign(new Error('This address takes no CSV.'), { statusCode: 415 }));
  });
}

/**
 * The text of a CSV body, without a byte order mark.
 * @throws Problem 415 for a body of another type, 400 for one that is not UTF-8
 */
export function csvText({ body }: FastifyRequest): string {
  if (!(body instanceof CsvBody)) throw new Problem('wrong-media-type', 'Send the table as text/csv.');
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(body.bytes);
  } catch {
    throw invalidInput([{ pointer: '', detail: 'is not UTF-8; save the table as "CSV UTF-8" and send that' }]);
  }
}
