import { Injectable } from '@nestjs/common';
import { hash, verify } from '@node-rs/argon2';

/**
 * Argon2id with 19 MiB, 2 passes, 1 lane.
 * @see OWASP Password Storage Cheat Sheet
 */
const COST = { memoryCost: 19_456, timeCost: 2, parallelism: 1 };

/** Each hash takes 19 MiB for some 30 ms: a burst of sign-ins waits in line instead of taking the memory. */
const MOST_AT_ONCE = 4;

@Injectable()
export class Passwords {
  private running = 0;
  private readonly waiting: (() => void)[] = [];
  private decoy: Promise<string> | null = null;

  hash(password: string): Promise<string> {
    return this.inLine(() => hash(password.normalize('NFKC'), COST));
  }

  verify(stored: string, password: string): Promise<boolean> {
    return this.inLine(() => verify(stored, password.normalize('NFKC')));
  }

  /** Takes as long as a real check, so that the time of an answer does not tell whether an address is known. */
  async verifyNothing(password: string): Promise<false> {
    this.decoy ??= this.hash('a password that nobody has');
    await this.verify(await this.decoy, password);
    return false;
  }

  private async inLine<T>(work: () => Promise<T>): Promise<T> {
    if (this.running >= MOST_AT_ONCE) await new Promise<void>((go) => this.waiting.push(go));
    else this.running++;
    try {
      return await work();
    } finally {
      // The place is handed on, not given back, so that a newcomer can't slip in between.
      const next = this.waiting.shift();
      if (next) next();
      else this.running--;
    }
  }
}
