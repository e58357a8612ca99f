import { Injectable } from '@nestjs/common';
import { RateLimiterMemory, type RateLimiterRes } from 'rate-limiter-flexible';
import { Problem } from '../../platform/http/problem.js';

const WINDOW_SECONDS = 15 * 60;
const MOST_FAILURES = 30;

/**
 * Limits wrong codes by address. Only failures count, so that a whole crew can be enrolled from one yard's network.
 * Kept in this process: a restart forgives, and several instances each allow the number above; against 80 random bits
 * that helps nobody.
 */
@Injectable()
export class CodeLimits {
  private readonly failures = new RateLimiterMemory({ points: MOST_FAILURES, duration: WINDOW_SECONDS });

  /** Counts a code before it is looked at, so that many at once can't slip through. @throws Problem 429 */
  async begin(address: string): Promise<void> {
    try {
      await this.failures.consume(address);
    } catch (refusal) {
      const seconds = Math.ceil((refusal as RateLimiterRes).msBeforeNext / 1000);
      throw new Problem('too-many-attempts', `There were too many wrong codes. Try again in ${seconds} seconds.`, [], { 'retry-after': String(seconds) });
    }
  }

  async succeeded(address: string): Promise<void> {
    await this.failures.reward(address);
  }
}
