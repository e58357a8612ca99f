import { type ChildProcess, fork } from 'node:child_process';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import autocannon from 'autocannon';
import { startEmbeddedServer } from '../../src/platform/database/embedded/index.js';
import { type Provisioned, provision } from '../../src/platform/database/provision.js';
import { type Measurement, median } from '../measure.js';
import { makeWorld, type World } from './world.js';

const CONNECTIONS = 20;
const SECONDS = 3;
/** Both are compiled while they run; on a small machine that takes its time. */
const WARM_UP_SECONDS = 5;
const ROUNDS = 3;
const LIST_TARGET = 0.4;

/** The same flags as `npm start`. */
const NODE_FLAGS = ['--max-semi-space-size=8'];
/** BENCH_PROFILE names a folder for CPU profiles of both servers. */
const PROFILE = process.env['BENCH_PROFILE'] === undefined ? [] : ['--cpu-prof', `--cpu-prof-dir=${process.env['BENCH_PROFILE']}`];

/** The reads of the office, and the memory of a service that has nothing to do. */
export function benchLists(): Promise<Measurement[]> {
  return benchRoutes(makeWorld, idleMemory);
}

/** Reads through the API beside a bare node:http + pg handler doing the same SQL, in turn, in the same run. */
export async function benchRoutes(make: (database: Provisioned) => Promise<World>, first?: (service: ChildProcess | undefined) => Promise<Measurement>): Promise<Measurement[]> {
  const folder = await mkdtemp(path.join(tmpdir(), 'rillbook-bench-'));
  const server = await startEmbeddedServer({ dataDir: folder, log: () => undefined });
  const children: ChildProcess[] = [];
  try {
    const database = await provision(server.url);
    const world = await make(database);
    const bare = await serve('bare-server.mjs', { serviceUrl: database.serviceUrl, world }, children);
    const ours = await serve('service-server.mjs', { database }, children);
    const results = first === undefined ? [] : [await first(children[1])];
    for (const route of world.routes) results.push(await compare(route, world, ours, bare));
    return results;
  } finally {
    for (const child of children) child.disconnect();
    await server.stop();
    await rm(folder, { recursive: true, force: true });
  }
}

async function compare(route: World['routes'][number], world: World, ours: string, bare: string): Promise<Measurement> {
  const [mine, other]: [number[], number[]] = [[], []];
  await load(ours, route.path, world.token, WARM_UP_SECONDS);
  await load(bare, route.path, world.token, WARM_UP_SECONDS);
  for (let round = 0; round < ROUNDS; round++) {
    mine.push(await load(ours, route.path, world.token, SECONDS));
    other.push(await load(bare, route.path, world.token, SECONDS));
  }
  const [own, yardstick] = [median(mine), median(other)];
  const ratio = own / yardstick;
  const isTarget = route.path.startsWith('/v1/jobs?');
  return { name: `${route.name}, ${CONNECTIONS} connections, ${route.statements.length} statement(s)`, ours: own, yardstick, ratio, unit: 'requests/s', target: isTarget ? `ratio at least ${LIST_TARGET}` : 'none', met: !isTarget || ratio >= LIST_TARGET };
}

/** Requests a second, all of them answered with 200. */
async function load(url: string, route: string, token: string, seconds: number): Promise<number> {
  const result = await autocannon({ url: url + route, connections: CONNECTIONS, duration: seconds, headers: { authorization: `Bearer ${token}` } });
  if (result.non2xx > 0 || result.errors > 0) throw new Error(`${url}${route}: ${result.non2xx} bad answers, ${result.errors} errors`);
  return result.requests.average;
}

/** Resident memory of the service a few seconds after its start, before the first request; null off Linux. */
async function idleMemory(service: ChildProcess | undefined): Promise<Measurement> {
  await new Promise((resolve) => setTimeout(resolve, 5_000));
  const status = await readFile(`/proc/${service?.pid}/status`, 'utf8').catch(() => '');
  const mebibytes = Number(/^VmRSS:\s+(\d+) kB/m.exec(status)?.[1] ?? NaN) / 1024;
  return { name: 'memory of the idle service, without PostgreSQL', ours: mebibytes, yardstick: null, ratio: null, unit: 'MiB', target: 'under 160 MiB', met: mebibytes < 160 };
}

async function serve(file: string, input: object, children: ChildProcess[]): Promise<string> {
  const child = fork(fileURLToPath(new URL(file, import.meta.url)), { env: { ...process.env, BENCH_INPUT: JSON.stringify(input) }, execArgv: [...NODE_FLAGS, ...PROFILE] });
  children.push(child);
  return new Promise((resolve, reject) => {
    child.once('message', (message) => resolve((message as { url: string }).url));
    child.once('exit', (code) => reject(new Error(`${file} ended with ${code}`)));
  });
}
