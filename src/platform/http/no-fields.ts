import { type CallHandler, type ExecutionContext, Injectable, type NestInterceptor } from '@nestjs/common';
import type { FastifyRequest } from 'fastify';
import type { Observable } from 'rxjs';
import { requireBounded } from './body-bounds.js';
import { invalidInput, pointerBelow } from './problems.js';

/** For actions that take nothing: a date sent along with "issue" must not seem to have been heeded. */
@Injectable()
export class NoFields implements NestInterceptor {
  /** @throws Problem 400 for anything but no body or an empty object */
  intercept(context: ExecutionContext, next: CallHandler): Observable<unknown> {
    const { body } = context.switchToHttp().getRequest<FastifyRequest>();
    requireBounded(body);
    if (typeof (body ?? {}) !== 'object' || Array.isArray(body)) throw invalidInput([{ pointer: '', detail: 'the body must be missing or an empty JSON object' }]);
    const names = Object.keys(body ?? {});
    if (names.length > 0) throw invalidInput(names.map((name) => ({ pointer: pointerBelow('', name), detail: 'is not a known field: this action takes none; remove it' })));
    return next.handle();
  }
}
