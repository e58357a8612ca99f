import { Injectable } from '@nestjs/common';
import type { FastifyRequest } from 'fastify';
import { Clock } from '../clock/clock.js';
import { Problem } from '../http/problem.js';
import { AccessTokens, type TokenSubject } from './access-tokens.js';

const CHALLENGE = { 'www-authenticate': 'Bearer realm="rillbook"' };

/** Whom the token of a request speaks for. */
@Injectable()
export class Bearer {
  constructor(
    private readonly tokens: AccessTokens,
    private readonly clock: Clock,
  ) {}

  /** @throws Problem 401 for no token, or none of ours that is good at this moment */
  async subjectOf({ headers }: FastifyRequest): Promise<TokenSubject> {
    const token = /^Bearer ([A-Za-z0-9._-]{20,2000})$/i.exec(headers.authorization ?? '')?.[1];
    if (token === undefined) throw new Problem('not-signed-in', 'Send the access token in the header "Authorization: Bearer …". POST /v1/sessions gives one.', [], CHALLENGE);
    const subject = await this.tokens.check(token, this.clock.now());
    if (subject === null) throw new Problem('not-signed-in', 'The access token is not valid or has expired. Refresh it with POST /v1/sessions/refresh, or sign in again.', [], CHALLENGE);
    return subject;
  }
}
