import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import pg from 'pg';
import supertest from 'supertest';
import { createApp } from '../../src/create-app.js';
import { openApiDocument } from '../../src/platform/http/openapi.js';
import { Clock } from '../../src/platform/clock/clock.js';
import { ContractCheck } from './contract-check.js';
import { makeTestDatabase, type TestDatabase } from './test-database.js';

export interface TestApp {
  readonly app: NestFastifyApplication;
  readonly database: TestDatabase;
  readonly url: string;
  /** A request without a token; its answer is held against the contract. */
  request(method: 'get' | 'post' | 'patch' | 'put' | 'delete', path: string): supertest.Test;
  /** A request without a token, and without a look at the contract. */
  http(): ReturnType<typeof supertest>;
  /** Runs SQL as the owner of the database, behind the service's back and past row-level security. */
  sql<T extends object = Record<string, unknown>>(text: string, values?: unknown[]): Promise<T[]>;
  /** Runs `work` while a transaction of the owner's, which commits after it, is open. */
  inTransaction(work: (query: (text: string, values?: unknown[]) => Promise<unknown>) => Promise<void>): Promise<void>;
  /** Sets the service's clock; null lets it run again. */
  setClock(now: string | null): void;
  close(): Promise<void>;
}

/** What it takes to act on a running application as its clients do. */
export type AppClient = Pick<TestApp, 'app' | 'request'>;

export function appClient(app: NestFastifyApplication, url: string): AppClient {
  let check: ContractCheck | undefined;
  return {
    app,
    request: (method, path) =>
      supertest(url)[method](path).expect((answer) => {
        check ??= new ContractCheck(openApiDocument(app));
        check.verify(method.toUpperCase(), path, answer);
      }),
  };
}

/** The whole service on a database of its own, listening on a free port. */
export async function startTestApp(): Promise<TestApp> {
  const database = await makeTestDatabase();
  const app = await createApp(database, 'silent');
  await app.listen(0, '127.0.0.1');
  const url = (await app.getUrl()).replace('[::1]', '127.0.0.1');
  const owner = new pg.Pool({ connectionString: database.ownerUrl, max: 2 });
  // The pool's end does not wait until its connections are closed: on a busy machine the drop of the database ends them.
  owner.on('connect', (client) => client.on('error', () => undefined));
  const clock = app.get(Clock);
  const realNow = clock.now.bind(clock);
  return {
    ...appClient(app, url),
    database,
    url,
    http: () => supertest(url),
    sql: async <T extends object>(text: string, values: unknown[] = []) => (await owner.query<T>(text, values)).rows,
    inTransaction: async (work) => {
      const client = await owner.connect();
      try {
        await client.query('BEGIN');
        await work((text, values = []) => client.query(text, values));
        await client.query('COMMIT');
      } finally {
        client.release();
      }
    },
    setClock: (now) => {
      clock.now = now === null ? realNow : () => new Date(now);
    },
    close: async () => {
      await app.close();
      await owner.end();
      await database.drop();
    },
  };
}
