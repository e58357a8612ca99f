import { Injectable } from '@nestjs/common';
import { RateLimiterMemory, type RateLimiterRes } from 'rate-limiter-flexible';
import { Problem } from '../../platform/http/problem.js';

const WINDOW_SECONDS = 15 * 60;
const MOST_OF_PAIR = 8;
const MOST_OF_ADDRESS = 100;

/**
 * Limits failed sign-ins: by account and address, so that a stranger's guesses can't lock the owner out from
 * elsewhere; by account from everywhere; and by address over all accounts. Limits wrong present passwords of people who
 * change their own: else a found phone would be the place to guess the password that outlives it. Successes do not count.
 * Kept in this process: a restart forgives, and several instances each allow the numbers below.
 */
@Injectable()
export class AttemptLimits {
  private readonly pair = new RateLimiterMemory({ points: MOST_OF_PAIR, duration: WINDOW_SECONDS });
  private readonly account = new RateLimiterMemory({ points: 50, duration: WINDOW_SECONDS });
  private readonly address = new RateLimiterMemory({ points: MOST_OF_ADDRESS, duration: WINDOW_SECONDS });
  private readonly person = new RateLimiterMemory({ points: MOST_OF_PAIR, duration: WINDOW_SECONDS });

  /** Counts an attempt before the password is looked at, so that many at once can't slip through. @throws Problem 429 */
  async begin(email: string, address: string): Promise<void> {
    const account = email.toLowerCase();
    // Asked first: whoever is refused anyway must not leave a row behind for each of a million invented accounts.
    const before = await this.address.get(address);
    if (before !== null && before.consumedPoints >= MOST_OF_ADDRESS) throw refused(before, 'failed sign-ins');
    try {
      await this.pair.consume(`${account} ${address}`);
      await this.account.consume(account);
      await this.address.consume(address);
    } catch (refusal) {
      throw refused(refusal as RateLimiterRes, 'failed sign-ins');
    }
  }

  async succeeded(email: string, address: string): Promise<void> {
    const account = email.toLowerCase();
    await this.pair.delete(`${account} ${address}`);
    await this.account.reward(account);
    await this.address.reward(address);
  }

  /** Counts a person's proof of the present password, before it is looked at. @throws Problem 429 */
  async beginProof(personId: string): Promise<void> {
    try {
      await this.person.consume(personId);
    } catch (refusal) {
      throw refused(refusal as RateLimiterRes, 'wrong passwords');
    }
  }

  async proved(personId: string): Promise<void> {
    await this.person.delete(personId);
  }
}

function refused({ msBeforeNext }: RateLimiterRes, what: string): Problem {
  const seconds = Math.ceil(msBeforeNext / 1000);
  return new Problem('too-many-attempts', `There were too many ${what}. Try again in ${seconds} seconds.`, [], { 'retry-after': String(seconds) });
}
