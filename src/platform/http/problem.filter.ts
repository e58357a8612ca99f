import { type ArgumentsHost, Catch, type ExceptionFilter, HttpException, Logger } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { DomainError } from '../../domain/errors.js';
import { isUnavailable } from '../database/database-errors.js';
import { fromConstraint } from './constraint-problems.js';
import { Problem, problemBody, type ProblemCode } from './problem.js';
import { invalidInput } from './problems.js';

const logger = new Logger('http');

/** Turns anything thrown into a problem that the client may see; what is not its fault is logged, never shown. */
export function toProblem(error: unknown): Problem {
  if (error instanceof Problem) return error;
  if (error instanceof DomainError) return invalidInput(error.violations);
  const fromDatabase = fromConstraint(error);
  if (fromDatabase !== null) return fromDatabase;
  if (isUnavailable(error)) return new Problem('unavailable', 'The database does not answer just now. Nothing was changed by this request; send it again in a few seconds.', [], { 'retry-after': '2' });
  const status = statusOf(error);
  if (status !== null) return fromStatus(status, (error as Error).message);
  return new Problem('unexpected', 'The request failed for a reason on our side. Send it again; if it fails again, report the request id.');
}

function statusOf(error: unknown): number | null {
  if (error instanceof HttpException) return error.getStatus();
  const status = (error as { statusCode?: unknown } | null)?.statusCode;
  return typeof status === 'number' && status >= 400 && status < 500 ? status : null;
}

const BY_STATUS: Readonly<Record<number, [ProblemCode, string]>> = {
  403: ['not-found', 'There is nothing at this address. The API reference at /docs lists what there is.'],
  404: ['not-found', 'There is nothing at this address. The API reference at /docs lists what there is.'],
  405: ['method-not-allowed', 'The API reference at /docs lists the methods of each address.'],
  413: ['body-too-large', 'A body may have at most 2 MiB, and 16 KiB where no token is needed. Send less at once.'],
  414: ['malformed-request', 'The address is too long.'],
  415: ['wrong-media-type', 'Send application/json, or application/merge-patch+json with PATCH; the API reference at /docs names the addresses that take something else.'],
};

function fromStatus(status: number, message: string): Problem {
  const [code, detail] = BY_STATUS[status] ?? (status >= 500 ? (['unexpected', 'The request failed for a reason on our side.'] as const) : (['malformed-request', readable(message)] as const));
  return new Problem(code, detail);
}

/** The framework's own words, where they can help, and never more than one line of them. */
function readable(message: string): string {
  const line = message.split('\n')[0]?.slice(0, 200) ?? '';
  return `The request could not be read: ${line}. The API reference at /docs shows how addresses and bodies are written.`;
}

export function sendProblem(problem: Problem, request: FastifyRequest, reply: FastifyReply): void {
  void reply
    .status(problem.status)
    .headers(problem.headers)
    .header('content-type', 'application/problem+json; charset=utf-8')
    .send(JSON.stringify(problemBody(problem, request.url.split('?')[0] ?? '')));
}

@Catch()
export class ProblemFilter implements ExceptionFilter {
  catch(error: unknown, host: ArgumentsHost): void {
    const http = host.switchToHttp();
    const request = http.getRequest<FastifyRequest>();
    const problem = toProblem(error);
    // A problem that was thrown as such is what the code meant to say, not a failure.
    if (problem.status >= 500 && problem !== error) logger.error({ requestId: request.id, err: error }, 'request failed');
    sendProblem(problem, request, http.getResponse<FastifyReply>());
  }
}
