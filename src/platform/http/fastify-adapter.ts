import type { IncomingMessage } from 'node:http';
import { FastifyAdapter } from '@nestjs/platform-fastify';
import { type FastifyError, type FastifyInstance, type FastifyReply, type FastifyRequest, LogController } from 'fastify';
import { v7 as uuidv7 } from 'uuid';
import { requestContext } from '../context/request-context.js';
import { parseJson } from './json-parser.js';
import type { Lifecycle } from './lifecycle.js';
import { loggedError } from './logged-error.js';
import { loggedPath } from './logged-path.js';
import { sendProblem, toProblem } from './problem.filter.js';

/** A survey with 5,000 probe readings is about 400 KB. */
const BODY_LIMIT = 2 * 1024 * 1024;
const REQUEST_ID = /^[A-Za-z0-9._:-]{8,64}$/;

/** Fastify as this service needs it: request ids, quiet logs without secrets, merge patches, limits, draining. */
export function createAdapter(logLevel: string, lifecycle: Lifecycle): FastifyAdapter {
  const adapter = new FastifyAdapter({
    bodyLimit: BODY_LIMIT,
    routerOptions: { maxParamLength: 200 },
    // A client that opens a connection and says nothing must not hold it for ever.
    connectionTimeout: 60_000,
    requestTimeout: 60_000,
    keepAliveTimeout: 65_000,
    genReqId: (request: IncomingMessage) => {
      const given = request.headers['x-request-id'];
      return typeof given === 'string' && REQUEST_ID.test(given) ? given : uuidv7();
    },
    logger: { level: logLevel, serializers: { err: loggedError } },
    // Our own line for each request, below: without bodies and headers, where secrets are.
    logController: new LogController({ disableRequestLogging: true, requestIdLogLabel: 'requestId' }),
    // An address that can't be decoded never reaches the framework's filters.
    frameworkErrors: (error: FastifyError, request: FastifyRequest, reply: FastifyReply) => {
      sendProblem(toProblem(error), request, reply);
    },
  });
  const fastify = adapter.getInstance<FastifyInstance>();
  // JSON alone: the framework would also take plain text and, read as an object, what a form on any page can send.
  fastify.removeAllContentTypeParsers();
  fastify.addContentTypeParser(['application/json', 'application/merge-patch+json'], { parseAs: 'buffer', bodyLimit: BODY_LIMIT }, parseJson);
  fastify.addHook('onRequest', (request, reply, next) => {
    void reply.header('x-request-id', request.id);
    requestContext.run({ requestId: request.id }, next);
  });
  fastify.addHook('onSend', (_request, reply, payload, next) => {
    // A kept connection would hold the stop up; the client opens a new one, to another instance or after the restart.
    if (lifecycle.draining) void reply.header('connection', 'close');
    next(null, payload);
  });
  fastify.addHook('onResponse', (request, reply, next) => {
    const line = { method: request.method, path: loggedPath(request.url), status: reply.statusCode, ms: Math.round(reply.elapsedTime * 10) / 10 };
    // A 503 is an answer, such as that of a probe while the service starts; what went wrong behind it has a line of its own.
    if (reply.statusCode >= 500 && reply.statusCode !== 503) request.log.error(line, 'request failed');
    else request.log.info(line, 'request');
    next();
  });
  return adapter;
}
