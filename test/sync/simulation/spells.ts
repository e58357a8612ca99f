import { Refused } from '../../../examples/crew-client/index.js';

interface Spell<T> {
  readonly of: T;
  /** Milliseconds of the wall clock; the office asked for it, and was told that it is so. */
  readonly asked: number;
  begun: number;
  /** The office asked for the end of it, and was told that it is over. */
  endAsked: number;
  ended: number;
}

/** When something was so, as far as the office can know it: between asking and answer nobody does. */
export class Spells<T> {
  private readonly spells: Spell<T>[] = [];

  get count(): number {
    return this.spells.length;
  }

  /** Begins it, waits, ends it. A beginning that the service refuses is none. */
  async live(of: T, begin: () => Promise<unknown>, stay: () => Promise<unknown>, end: () => Promise<unknown>): Promise<void> {
    const spell: Spell<T> = { of, asked: Date.now(), begun: Infinity, endAsked: Infinity, ended: Infinity };
    this.spells.push(spell);
    try {
      await begin();
    } catch (error) {
      if (!(error instanceof Refused)) throw error;
      this.spells.splice(this.spells.indexOf(spell), 1);
      return;
    }
    spell.begun = Date.now();
    await stay();
    spell.endAsked = Date.now();
    await end();
    spell.ended = Date.now();
  }

  /** Whether it may have been so at some moment of this time. */
  mayHaveBeen(which: (of: T) => boolean, since: number, until: number): boolean {
    return this.spells.some(({ of, asked, ended }) => which(of) && asked <= until && ended >= since);
  }

  /** Whether it was so for all of this time. */
  surelyWas(which: (of: T) => boolean, since: number, until: number): boolean {
    return this.spells.some(({ of, begun, endAsked }) => which(of) && begun <= since && endAsked >= until);
  }
}
