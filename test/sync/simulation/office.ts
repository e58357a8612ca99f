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
  ask<T>(method: WireRequest['method'], path_: string, body?: object): Promise<T> {
    return this.insist(() => this.session.send<T>(method, path_, body));
  }

  /** Changes some fields of something. */
  async change(path_: string, patch: object): Promise<void> {
    const { headers } = await this.insist(() => this.session.carry({ method: 'GET', path: path_, headers: {} }));
    const request = { method: 'PATCH', path: path_, headers: { 'content-type': 'application/merge-patch+json', 'if-match': headers.get('etag') ?? '' }, body: JSON.stringify(patch) } as const;
    await this.insist(() => this.session.carry(request));
  }

  /** Every item of a list, page by page. */
  async all<T>(path_: string): Promise<T[]> {
    const items: T[] = [];
    for (let cursor: string | null = ''; cursor !== null; ) {
      const page: { items: T[]; nextCursor: string | null } = await this.ask('GET', `${path_}${path_.includes('?') ? '&' : '?'}limit=200${cursor === '' ? '' : `&cursor=${cursor}`}`);
      items.push(...page.items);
      cursor = page.nextCursor;
    }
    return items;
  }

  close(): void {
    this.session.close();
  }

  private async insist<T>(work: () => Promise<T>): Promise<T> {
    for (const deadline = performance.now() + PATIENCE_MS; ; ) {
      try {
        return await work();
      } catch (error) {
        const passing = error instanceof NoAnswer || (error instanceof Refused && error.passing);
        if (!passing || performance.now() > deadline) throw error;
        await new Promise((resolve) => setTimeout(resolve, 100));
      }
    }
  }
}
