import path from 'node:path';
import { byPassword, NoAnswer, Refused, Session, type Wire, type WireRequest } from '../../../examples/crew-client/index.js';

const PATIENCE_MS = 60_000;

/** The owner at a desk: asks until there is an answer, since the service may be killed meanwhile. */
export class Office {
  private readonly session: Session;

  constructor(folder: string, wire: Wire, email: string, password: string) {
    this.session = new Session(path.join(folder, `${email}.jsonl`), wire, byPassword(email, password), () => performance.now());
  }

  /** @throws Refused for what no waiting helps against */
  async ask<T>(method: WireRequest['method'], path_: string, body?: object): Promise<T> {
    for (const deadline = performance.now() + PATIENCE_MS; ; ) {
      try {
        return await this.session.send<T>(method, path_, body);
      } catch (error) {
        const passing = error instanceof NoAnswer || (error instanceof Refused && error.passing);
        if (!passing || performance.now() > deadline) throw error;
        await new Promise((resolve) => setTimeout(resolve, 100));
      }
    }
  }

  /** Every item of a list, page by page. */
  async all<T>(path_: string): Promise<T[]> {
    const items: T[] = [];
    for (let cursor: string | null = ''; cursor !== null; ) {
      const page: { items: T[]; nextCursor: string | null } = await this.ask('GET', `${path_}?limit=200${cursor === '' ? '' : `&cursor=${cursor}`}`);
      items.push(...page.items);
      cursor = page.nextCursor;
    }
    return items;
  }

  close(): void {
    this.session.close();
  }
}
