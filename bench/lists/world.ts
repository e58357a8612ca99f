import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { DataSource } from 'typeorm';
import { createApp } from '../../src/create-app.js';
import type { Provisioned } from '../../src/platform/database/provision.js';
import { makeTestCompany, type Client } from '../../test/support/test-company.js';
import { appClient } from '../../test/support/test-app.js';

export interface Statement {
  readonly text: string;
  readonly values: readonly unknown[];
}

export interface BenchRoute {
  readonly name: string;
  readonly path: string;
  /** What the service asks of the database to answer it. */
  readonly statements: readonly Statement[];
}

export interface World {
  readonly companyId: string;
  readonly token: string;
  readonly routes: readonly BenchRoute[];
}

const QUOTES = 120;
const PARTS = 12;

/** A company with quotes and jobs made through the API, and what each measured route asks of the database. */
export async function makeWorld(database: Provisioned): Promise<World> {
  const app = await createApp(database, 'silent');
  await app.listen(0, '127.0.0.1');
  const company = await makeTestCompany(appClient(app, (await app.getUrl()).replace('[::1]', '127.0.0.1')));
  const { owner } = company;
  const parts: string[] = [];
  for (let i = 0; i < PARTS; i++) {
    parts.push(await post(owner, '/v1/parts', { sku: `P-${i}`, name: `Part ${i}`, unit: 'each', unitCost: { amount: '12.50', currency: 'USD' }, markupPercent: '35', packSize: '1', taxCategory: 'materials' }));
  }
  await post(owner, '/v1/labor-rules', { costCode: 'cleanout', name: 'Clean-out', quantity: 'count', unit: 'each', setupHours: '2', hoursPerUnit: '3', minimumHours: '4', effectiveFrom: '2020-01-01' });
  let [quoteId, jobId] = ['', ''];
  for (let i = 0; i < QUOTES; i++) {
    quoteId = await post(owner, '/v1/quotes', { title: `Pond ${i}`, labor: [{ costCode: 'cleanout', quantity: '2' }], parts: parts.map((partId) => ({ partId, quantity: '3', costCode: 'filtration' })), other: [] });
    await post(owner, `/v1/quotes/${quoteId}/issue`, {});
    jobId = ((await owner.post(`/v1/quotes/${quoteId}/acceptance`, { acceptedBy: 'A. Customer', acceptedOn: new Date().toISOString().slice(0, 10) })).body as { jobId: string }).jobId;
  }
  const paths = { 'list of 50 jobs': '/v1/jobs?limit=50', 'list of 50 quotes': '/v1/quotes?limit=50', 'one job': `/v1/jobs/${jobId}`, 'one quote with its lines': `/v1/quotes/${quoteId}` };
  const routes = await routesOf(app, owner, paths);
  await app.close();
  return { companyId: company.id, token: owner.token, routes };
}

export async function post(client: Client, path: string, body: object): Promise<string> {
  const answer = await client.post(path, body);
  if (answer.status >= 300) throw new Error(`POST ${path}: ${answer.text}`);
  return (answer.body as { id: string }).id;
}

/** Routes to measure, by what they are called. */
export async function routesOf(app: NestFastifyApplication, client: Client, paths: Readonly<Record<string, string>>): Promise<BenchRoute[]> {
  const routes: BenchRoute[] = [];
  for (const [name, path] of Object.entries(paths)) routes.push({ name, path, statements: await statementsOf(app, client, path) });
  return routes;
}

/** The statements of one request, without those that only a first request on a connection needs. */
async function statementsOf(app: NestFastifyApplication, client: Client, path: string): Promise<Statement[]> {
  await client.get(path);
  const seen: Statement[] = [];
  const dataSource = app.get(DataSource);
  const before = dataSource.logger;
  dataSource.logger = { ...before, logQuery: (text, values) => void seen.push({ text, values: (values as unknown[] | undefined) ?? [] }), logQueryError: () => undefined, logQuerySlow: () => undefined, logSchemaBuild: () => undefined, logMigration: () => undefined, log: () => undefined };
  const answer = await client.get(path);
  dataSource.logger = before;
  if (answer.status !== 200) throw new Error(`GET ${path}: ${answer.text}`);
  return seen.filter(({ text }) => !text.includes('sign_in_session') && !text.includes('set_config'));
}
