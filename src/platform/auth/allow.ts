import { applyDecorators, createParamDecorator, type ExecutionContext, SetMetadata } from '@nestjs/common';
import { RouteConfig } from '@nestjs/platform-fastify';
import type { FastifyRequest } from 'fastify';
import type { Actor, Role } from './actor.js';

export const ALLOWED_ROLES = Symbol('allowed roles');
export const OPEN_ROUTE = Symbol('open route');
/** Says the same to the framework below, which knows nothing of a guard's metadata. */
export const OPEN_CONFIG = 'openToAll';

/** Who may call a route. A route that says neither this nor `Open` answers nobody, and fails the tests. */
export const Allow = (roles: readonly Role[]): MethodDecorator => SetMetadata(ALLOWED_ROLES, roles);

/** A route that needs no token: sign-in and health. */
export const Open = (): MethodDecorator => applyDecorators(SetMetadata(OPEN_ROUTE, true), RouteConfig({ [OPEN_CONFIG]: true }));

export type AuthenticatedRequest = FastifyRequest & { actor?: Actor };

/** The person who sent the request. */
export const CurrentActor = createParamDecorator((_: unknown, context: ExecutionContext): Actor => {
  const { actor } = context.switchToHttp().getRequest<AuthenticatedRequest>();
  if (actor === undefined) throw new Error('An open route has no actor.');
  return actor;
});
