import { Injectable } from '@nestjs/common';
import { RateLimiterMemory, type RateLimiterRes } from 'rate-limiter-flexible';
import { Problem } from '../../platform/http/problem.js';

const WINDOW_SECONDS = 15 * 60;

/**
 * Limits failed sign-ins: by account and address, so that a stranger's guesses can't lock the owner out from
 * elsewhere; by account from everywhere; and by address over all accounts. Successes do not count.
 * Kept in this process: a restart forgives, and several instances each allow the numbers below.
 */
@Injectable()
export class AttemptLimits {
  private readonly pair = new RateLimiterMemory({ points: 8, duration: WINDOW_SECONDS });
  private readonly account = new RateLimiterMemory({ points: 50, duration: WINDOW_SECONDS });
  private readonly address = new RateLimiterMemory({ points: 100, duration: WINDOW_SECONDS });

  /** Counts an attempt before the password is looked at, so that many at once can't slip through. @throws Problem 429 */
  async begin(email: string, address: string): Promise<void> {
    const account = email.toLowerCase();
    try {
      await this.pair.consume(`${account} ${address}`);
      await this.account.consume(account);
      await this.address.consume(address);
    } catch (refusal) {
      const seconds = Math.ceil((refusal as RateLimiterRes).msBeforeNext / 1000);
      throw new Problem('too-many-attempts', `There were too many failed sign-ins. Try again in ${seconds} seconds.`, [], { 'retry-after': String(seconds) });
    }
  }

  async succeeded(email: string, address: string): Promise<void> {
    const account = email.toLowerCase();
    await this.pair.delete(`${account} ${address}`);
    await this.account.reward(account);
    await this.address.reward(address);
  }
}
