import { v7 as uuidv7 } from 'uuid';
import type { OutcomeView } from '../../src/features/sync/push/push.dto.js';
import type { TestApp } from '../support/test-app.js';
import type { Client } from '../support/test-company.js';

/** A phone that keeps what it pulls: the least that a client does. */
export class TestPhone {
  readonly clientId = uuidv7();
  readonly rows = new Map<string, { kind: string; revision: number; value: Record<string, unknown> }>();
  /** Every item that was ever received. */
  readonly received: { kind: string; id: string; change: string; value?: Record<string, unknown> }[] = [];
  cursor: string | null = null;
  pages = 0;
  private counter = 0;

  constructor(readonly client: Client, private readonly test: TestApp) {}

  mutation(kind: string, body: object, more: object = {}): { id: string } & Record<string, unknown> {
    return { id: uuidv7(), counter: ++this.counter, kind, recordedAt: new Date().toISOString(), body, ...more };
  }

  async push(mutations: readonly object[], sentAt = new Date().toISOString()): Promise<OutcomeView[]> {
    const answer = await this.client.post('/v1/sync/push', { clientId: this.clientId, sentAt, mutations }).expect(200);
    return answer.body.items as OutcomeView[];
  }

  /**
   * Pulls until there is no more, after what was committed until now has come into the feed: a transaction of a test
   * beside this one, in another database of the same server, holds it up.
   */
  async pull(limit = 200): Promise<void> {
    const [now] = await this.test.sql<{ end: string }>('SELECT pg_snapshot_xmax(pg_current_snapshot())::text AS end');
    for (let settled = false; !settled; ) {
      const [row] = await this.test.sql<{ settled: boolean }>('SELECT pg_snapshot_xmin(pg_current_snapshot()) >= $1::xid8 AS settled', [now?.end]);
      settled = row?.settled === true;
      if (!settled) await new Promise((resolve) => setTimeout(resolve, 5));
    }
    await this.pullAtOnce(limit);
  }

  async pullAtOnce(limit = 200): Promise<void> {
    while (await this.pullPage(limit));
  }

  /** One page; whether there is more. */
  async pullPage(limit: number): Promise<boolean> {
    const answer = await this.client.get(`/v1/sync/pull?limit=${limit}${this.cursor === null ? '' : `&cursor=${this.cursor}`}`).expect(200);
    for (const item of answer.body.items) {
      this.received.push(item);
      if (item.change === 'removal') this.rows.delete(`${item.kind} ${item.id}`);
      else this.rows.set(`${item.kind} ${item.id}`, item);
    }
    this.cursor = answer.body.cursor;
    this.pages++;
    return answer.body.more;
  }

  ids(kind: string): string[] {
    return [...this.rows.keys()].filter((key) => key.startsWith(`${kind} `)).map((key) => key.slice(kind.length + 1)).sort();
  }
}

/** An hour's body: `slot` hours after a day in May; entries of different slots never overlap. */
export function hour(jobId: string, personId: string, slot: number, more: object = {}): Record<string, unknown> {
  const start = Date.UTC(2026, 4, 4) + slot * 3_600_000;
  return { id: uuidv7(), jobId, personId, costCode: 'cleanout', startedAt: new Date(start).toISOString(), endedAt: new Date(start + 3_600_000).toISOString(), ...more };
}
