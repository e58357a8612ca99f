/** Lets a few do something costly at once; the others wait in line, so that a burst takes time and not memory. */
export class Turns {
  private running = 0;
  private readonly waiting: (() => void)[] = [];

  constructor(private readonly most: number) {}

  async take<T>(work: () => Promise<T>): Promise<T> {
    if (this.running >= this.most) await new Promise<void>((go) => this.waiting.push(go));
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
