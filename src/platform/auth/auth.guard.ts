import { type CanActivate, type ExecutionContext, Injectable } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import { Clock } from '../clock/clock.js';
import { Problem } from '../http/problem.js';
import { AccessTokens } from './access-tokens.js';
import type { Role } from './actor.js';
import { ALLOWED_ROLES, type AuthenticatedRequest, OPEN_ROUTE } from './allow.js';
import { SessionGate } from './session-gate.js';

/** Lets a request in when its route is open, or when its token is good and the route names the person's role. */
@Injectable()
export class AuthGuard implements CanActivate {
  constructor(
    private readonly reflector: Reflector,
    private readonly tokens: AccessTokens,
    private readonly gate: SessionGate,
    private readonly clock: Clock,
  ) {}

  async canActivate(context: ExecutionContext): Promise<boolean> {
    const handler = context.getHandler();
    if (this.reflector.get<boolean | undefined>(OPEN_ROUTE, handler) === true) return true;
    const request = context.switchToHttp().getRequest<AuthenticatedRequest>();
    const token = /^Bearer ([A-Za-z0-9._-]{20,2000})$/i.exec(request.headers.authorization ?? '')?.[1];
    if (token === undefined) throw new Problem('not-signed-in', 'Send the access token in the header "Authorization: Bearer …". POST /v1/sessions gives one.', [], CHALLENGE);
    const subject = await this.tokens.check(token, this.clock.now());
    if (subject === null) throw new Problem('not-signed-in', 'The access token is not valid or has expired. Refresh it with POST /v1/sessions/refresh, or sign in again.', [], CHALLENGE);
    const role = await this.gate.roleOf(subject);
    if (role === null) throw await this.gate.refusal(subject);
    const allowed = this.reflector.get<readonly Role[] | undefined>(ALLOWED_ROLES, handler) ?? [];
    if (!allowed.includes(role)) {
      throw new Problem('not-allowed', allowed.length === 0 ? 'Nobody may call this.' : `The role ${role} may not do that; it takes ${allowed.join(', ')}.`);
    }
    request.actor = { ...subject, role };
    return true;
  }
}

const CHALLENGE = { 'www-authenticate': 'Bearer realm="rillbook"' };
