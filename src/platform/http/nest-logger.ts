import type { LoggerService } from '@nestjs/common';
import type { FastifyBaseLogger } from 'fastify';

/** Sends the framework's messages to the same structured log as the requests. */
export class PinoNestLogger implements LoggerService {
  constructor(private readonly target: () => FastifyBaseLogger) {}

  log(message: unknown, ...context: unknown[]): void {
    this.write('debug', message, context);
  }

  error(message: unknown, ...context: unknown[]): void {
    this.write('error', message, context);
  }

  warn(message: unknown, ...context: unknown[]): void {
    this.write('warn', message, context);
  }

  private write(level: 'debug' | 'warn' | 'error', message: unknown, context: unknown[]): void {
    const [first, ...rest] = context;
    const text = typeof first === 'string' ? first : undefined;
    if (typeof message === 'object' && message !== null) this.target()[level](message, text);
    else this.target()[level]({ context: rest.at(-1) ?? text }, String(message));
  }
}
