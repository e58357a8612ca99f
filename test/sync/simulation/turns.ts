/** Lets so many do something at once; the others wait in a line. */
export class Turns {
  private readonly line: (() => void)[] = [];

  constructor(private free: number) {}

  async take<T>(work: () => Promise<T>): Promise<T> {
    if (this.free === 0) await new Promise<void>((resolve) => this.line.push(resolve));
    else this.free--;
    try {
      return await work();
    } finally {
      const next = this.line.shift();
      if (next === undefined) this.free++;
      else next();
    }
  }
}
