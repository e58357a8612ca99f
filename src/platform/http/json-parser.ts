import type { FastifyBodyParser } from 'fastify';
import { Problem } from './problem.js';

const utf8 = new TextDecoder('utf-8', { fatal: true });

/**
 * Reads a body as JSON. The framework's own parser takes bytes that are no UTF-8 for a replacement character, which
 * would be stored as the customer's name. An empty body is none: many clients name a type for a request without one.
 */
export const parseJson: FastifyBodyParser<Buffer> = (request, body, done) => {
  try {
    requirePlain(request.headers['content-encoding']);
    done(null, body.length === 0 ? undefined : JSON.parse(decoded(body)));
  } catch (error) {
    done(error instanceof SyntaxError ? malformed(error.message) : (error as Error));
  }
};

function requirePlain(encoding: string | undefined): void {
  if (encoding === undefined || encoding.toLowerCase() === 'identity') return;
  throw new Problem('wrong-media-type', 'The body has a Content-Encoding. Send it uncompressed, without that header.');
}

function decoded(body: Buffer): string {
  try {
    return utf8.decode(body);
  } catch {
    throw new Problem('malformed-request', 'The body holds bytes that are no UTF-8. Send well-formed JSON in UTF-8.');
  }
}

/** The parser's own words tell the place; they may quote the body, so no more than one line of them. */
function malformed(message: string): Problem {
  return new Problem('malformed-request', `The body is no well-formed JSON: ${message.split('\n')[0]?.slice(0, 200) ?? ''}. Send well-formed JSON in UTF-8.`);
}
