import type { FastifyInstance, FastifyRequest } from 'fastify';

/** A body that nobody has read yet: it is still in the request's own stream. */
class StreamedBody {}

/**
 * Lets the routes at these addresses take a body of this type as it comes, whatever its length; they must stop reading
 * by themselves. Every other route goes on to refuse the type with 415.
 */
export function acceptStreamAt(fastify: FastifyInstance, mediaType: string, addresses: readonly string[]): void {
  fastify.addContentTypeParser(mediaType, (request, _payload, done) => {
    if (addresses.includes(request.routeOptions.url ?? '')) done(null, new StreamedBody());
    else done(Object.assign(new Error(`This address takes no ${mediaType}.`), { statusCode: 415 }));
  });
}

/** Whether the body is still to be read from `request.raw`. */
export function isStreamed({ body }: FastifyRequest): boolean {
  return body instanceof StreamedBody;
}
