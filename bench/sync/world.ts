import pg from 'pg';
import { v7 as uuidv7 } from 'uuid';
import { createApp } from '../../src/create-app.js';
import { JobCrew } from '../../src/features/jobs/index.js';
import type { Actor } from '../../src/platform/auth/actor.js';
import type { Provisioned } from '../../src/platform/database/provision.js';
import { appClient } from '../../test/support/test-app.js';
import { makeTestCompany, signIn } from '../../test/support/test-company.js';
import { acceptSimpleWork } from '../../test/support/accepted-work.js';

export interface SyncWorld {
  readonly companyId: string;
  readonly personId: string;
  readonly token: string;
  /** Tokens of sessions of their own, as many phones have. */
  readonly phones: readonly string[];
  /** The jobs of the person's crew. */
  readonly mine: readonly string[];
  readonly others: readonly string[];
  readonly costCode: string;
  /** SQL as the owner, past row-level security. */
  sql(text: string, values?: unknown[]): Promise<Record<string, unknown>[]>;
  close(): Promise<void>;
}

const PHONES = 200;
const JOBS_OF_A_CREW = 5;
const JOBS_OF_OTHERS = 15;

/** A company with jobs, a crew and many signed-in phones. */
export async function makeSyncWorld(database: Provisioned, ownerUrl: string): Promise<SyncWorld> {
  const app = await createApp(database, 'silent');
  await app.listen(0, '127.0.0.1');
  const client = appClient(app, (await app.getUrl()).replace('[::1]', '127.0.0.1'));
  const company = await makeTestCompany(client);
  const jobs: string[] = [];
  for (let i = 0; i < JOBS_OF_A_CREW + JOBS_OF_OTHERS; i++) jobs.push((await acceptSimpleWork(company, '900.00')).jobId);
  const actor: Actor = { companyId: company.id, personId: null, role: 'owner', sessionId: null };
  const mine = jobs.slice(0, JOBS_OF_A_CREW);
  for (const job of mine) await app.get(JobCrew, { strict: false }).join(actor, job, [company.crewLead.personId]);
  const owner = new pg.Pool({ connectionString: ownerUrl, max: 2 });
  owner.on('error', () => undefined);
  const sql = async (text: string, values: unknown[] = []): Promise<Record<string, unknown>[]> => (await owner.query<Record<string, unknown>>(text, values)).rows;
  const [lead] = await sql('SELECT email FROM person WHERE id = $1', [company.crewLead.personId]);
  const [job] = await sql('SELECT cost_code FROM job_plan WHERE job_id = $1', [mine[0]]);
  const phones: string[] = [];
  for (let i = 0; i < PHONES; i++) phones.push((await signIn(client, String(lead?.['email']))).token);
  await app.close();
  return { companyId: company.id, personId: company.crewLead.personId, token: company.crewLead.token, phones, mine, others: jobs.slice(JOBS_OF_A_CREW), costCode: String(job?.['cost_code']), sql, close: () => owner.end() };
}

let slot = 0;

/** Hours that overlap no others, a minute each. */
export function hours(world: SyncWorld, jobs: readonly string[], count: number): Record<string, unknown>[] {
  return Array.from({ length: count }, (_, i) => {
    const start = Date.UTC(2020, 0, 1) + slot++ * 60_000;
    return { id: uuidv7(), jobId: jobs[i % jobs.length], personId: world.personId, costCode: world.costCode, startedAt: new Date(start).toISOString(), endedAt: new Date(start + 60_000).toISOString() };
  });
}

/** @throws Error unless the answer is 200 */
export async function call(url: string, token: string, route: string, body?: object): Promise<Record<string, unknown>> {
  const answer = await fetch(url + route, {
    method: body === undefined ? 'GET' : 'POST',
    headers: { authorization: `Bearer ${token}`, ...(body === undefined ? {} : { 'content-type': 'application/json' }) },
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
  });
  const text = await answer.text();
  if (answer.status !== 200) throw new Error(`${route}: ${answer.status} ${text.slice(0, 300)}`);
  return JSON.parse(text) as Record<string, unknown>;
}
