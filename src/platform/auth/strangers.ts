import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import type { FastifyRequest } from 'fastify';
import { Problem } from '../http/problem.js';
import { OPEN_CONFIG } from './allow.js';
import { Bearer } from './bearer.js';

/** The longest body of an open route, an enrolment with a name in the widest letters, has less than 2 KiB. */
const OPEN_BODY_LIMIT = 16 * 1024;

/**
 * Reads no body of a stranger but the small ones of the open routes. The framework reads a body before it asks a guard:
 * two hundred connections of somebody without a token held 400 MiB, and two requests a second of nested lists kept a
 * processor busy. Who may do what stays with the guard.
 */
export function keepStrangersShort(app: NestFastifyApplication): void {
  const bearer = app.get(Bearer);
  const fastify = app.getHttpAdapter().getInstance();
  fastify.addHook('onRoute', (route) => {
    if (isOpen(route.config)) route.bodyLimit = OPEN_BODY_LIMIT;
  });
  fastify.addHook('onRequest', async (request) => {
    if (!hasBody(request)) return;
    if (request.is404) throw new Problem('not-found', 'There is nothing at this address. The API reference at /docs lists what there is.');
    if (!isOpen(request.routeOptions.config)) await bearer.subjectOf(request);
  });
}

function isOpen(config: object | undefined): boolean {
  return config !== undefined && OPEN_CONFIG in config;
}

function hasBody({ headers }: FastifyRequest): boolean {
  return headers['transfer-encoding'] !== undefined || (headers['content-length'] ?? '0') !== '0';
}
