import { createHash } from 'node:crypto';
import { v7 as uuidv7 } from 'uuid';

/**
 * Numbers that follow from a seed. Each phone has a stream of its own, so that what one phone does never hangs on how
 * often another one drew before it.
 */
export class Random {
  private readonly state: Uint32Array;

  constructor(seed: string) {
    const digest = createHash('sha256').update(seed).digest();
    this.state = new Uint32Array([0, 4, 8, 12].map((at) => digest.readUInt32LE(at)));
  }

  /** From 0 up to, but not, 1. The generator is xoshiro128** (Blackman and Vigna, 2018). */
  next = (): number => {
    const [a = 0, b = 0, c = 0, d = 0] = this.state;
    const result = Math.imul(rotated(Math.imul(b, 5), 7), 9) >>> 0;
    const [c1, d1] = [c ^ a, d ^ b];
    this.state.set([a ^ d1, b ^ c1, c1 ^ (b << 9), rotated(d1, 11)]);
    return result / 2 ** 32;
  };

  chance(probability: number): boolean {
    return this.next() < probability;
  }

  /** A whole number, both ends included. */
  between(least: number, most: number): number {
    return least + Math.floor(this.next() * (most - least + 1));
  }

  /** @throws Error for an empty list */
  pick<T>(list: readonly T[]): T {
    if (list.length === 0) throw new Error('There is nothing to pick from.');
    return list[this.between(0, list.length - 1)] as T;
  }

  /** A UUIDv7 of the moment, the rest of it from the seed. */
  id = (): string => uuidv7({ random: Uint8Array.from({ length: 16 }, () => this.between(0, 255)) });
}

function rotated(bits: number, by: number): number {
  return (bits << by) | (bits >>> (32 - by));
}
