import { type CanActivate, type ExecutionContext, Injectable } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import { Problem } from '../http/problem.js';
import type { Role } from './actor.js';
import { ALLOWED_ROLES, type AuthenticatedRequest, OPEN_ROUTE } from './allow.js';
import { Bearer } from './bearer.js';
import { SessionGate } from './session-gate.js';

/** Lets a request in when its route is open, or when its token is good and the route names the person's role. */
@Injectable()
export class AuthGuard implements CanActivate {
  constructor(
    private readonly reflector: Reflector,
    private readonly bearer: Bearer,
    private readonly gate: SessionGate,
  ) {}

  async canActivate(context: ExecutionContext): Promise<boolean> {
    const handler = context.getHandler();
    if (this.reflector.get<boolean | undefined>(OPEN_ROUTE, handler) === true) return true;
    const request = context.switchToHttp().getRequest<AuthenticatedRequest>();
    const subject = await this.bearer.subjectOf(request);
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
