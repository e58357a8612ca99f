import { readFile } from 'node:fs/promises';
import autocannon from 'autocannon';
import type { Provisioned } from '../../src/platform/database/provision.js';
import { type Measurement, median } from '../measure.js';
import { type Process, withDatabase } from '../service.js';
import { makeWorld, type World } from './world.js';

const CONNECTIONS = 20;
const SECONDS = 3;
/** Both are compiled while they run; on a small machine that takes its time. */
const WARM_UP_SECONDS = 5;
const ROUNDS = 3;
const LIST_TARGET = 0.4;

/** The reads of the office, and the memory of a service that has nothing to do. */
export function benchLists(): Promise<Measurement[]> {
  return benchRoutes(makeWorld, idleMemory);
}

/** Reads through the API beside a bare node:http + pg handler doing the same SQL, in turn, in the same run. */
export function benchRoutes(make: (database: Provisioned) => Promise<World>, first?: (service: Process) => Promise<Measurement>): Promise<Measurement[]> {
  return withDatabase(async ({ database, start, startService }) => {
    const world = await make(database);
    const bare = await start('lists/bare-server.mjs', { serviceUrl: database.serviceUrl, world });
    const ours = await startService();
    const results = first === undefined ? [] : [await first(ours)];
    for (const route of world.routes) results.push(await compare(route, world, ours.url, bare.url));
    return results;
  });
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
async function idleMemory({ pid }: Process): Promise<Measurement> {
  await new Promise((resolve) => setTimeout(resolve, 5_000));
  const status = await readFile(`/proc/${pid}/status`, 'utf8').catch(() => '');
  const mebibytes = Number(/^VmRSS:\s+(\d+) kB/m.exec(status)?.[1] ?? NaN) / 1024;
  return { name: 'memory of the idle service, without PostgreSQL', ours: mebibytes, yardstick: null, ratio: null, unit: 'MiB', target: 'under 160 MiB', met: mebibytes < 160 };
}
