import { Turns } from './turns.js';

interface Line {
  readonly turns: Turns;
  /** How many stand in it or have their turn. */
  count: number;
}

/** Turns that are taken in rotation: of each, only the first in line waits among those of the others. */
export class FairTurns {
  private readonly all: Turns;
  private readonly lines = new Map<string, Line>();

  constructor(most: number) {
    this.all = new Turns(most);
  }

  /** @param whose everybody has one turn at a time */
  async take<T>(whose: string, work: () => Promise<T>): Promise<T> {
    const line = this.lines.get(whose) ?? { turns: new Turns(1), count: 0 };
    this.lines.set(whose, line);
    line.count++;
    try {
      return await line.turns.take(() => this.all.take(work));
    } finally {
      line.count--;
      if (line.count === 0) this.lines.delete(whose);
    }
  }
}
