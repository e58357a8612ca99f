import { Injectable } from '@nestjs/common';
import { hash, verify } from '@node-rs/argon2';
import { Turns } from '../turns/turns.js';

/**
 * Argon2id with 19 MiB, 2 passes, 1 lane.
 * @see OWASP Password Storage Cheat Sheet
 */
const COST = { memoryCost: 19_456, timeCost: 2, parallelism: 1 };

/** Each hash takes 19 MiB for some 30 ms: a burst of sign-ins waits in line instead of taking the memory. */
const MOST_AT_ONCE = 4;

@Injectable()
export class Passwords {
  private readonly turns = new Turns(MOST_AT_ONCE);
  private decoy: Promise<string> | null = null;

  hash(password: string): Promise<string> {
    return this.turns.take(() => hash(password.normalize('NFKC'), COST));
  }

  verify(stored: string, password: string): Promise<boolean> {
    return this.turns.take(() => verify(stored, password.normalize('NFKC')));
  }

  /** Takes as long as a real check, so that the time of an answer does not tell whether an address is known. */
  async verifyNothing(password: string): Promise<false> {
    this.decoy ??= this.hash('a password that nobody has');
    await this.verify(await this.decoy, password);
    return false;
  }
}
