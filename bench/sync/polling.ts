import { readdir, readFile } from 'node:fs/promises';
import type { Measurement } from '../measure.js';
import { call, type SyncWorld } from './world.js';

const POLL_SECONDS = 30;
const ROUNDS = 3;
const MOST_CORES = 0.1;
/** A session is believed for three seconds; phones that poll each half a minute are asked about each time. */
const BETWEEN_ROUNDS_MS = 3_200;
const TICKS_A_SECOND = 100;

/**
 * What many phones cost that ask every half a minute and hear that nothing changed: CPU of the service and of the
 * database server, on Linux.
 * @param service the process of the service
 */
export async function benchPolling(world: SyncWorld, url: string, service: number): Promise<Measurement> {
  const [backend] = await world.sql('SELECT pg_backend_pid() AS pid');
  const roots = [service, await parentOf(Number(backend?.['pid']))];
  // One person's phones: they keep the same, so one pull brings them all up to the present.
  const cursor = await latest(url, world.token);
  const before = await cpuSeconds(roots);
  for (let round = 0; round < ROUNDS; round++) {
    await new Promise((resolve) => setTimeout(resolve, BETWEEN_ROUNDS_MS));
    for (const token of world.phones) {
      const page = (await call(url, token, `/v1/sync/pull?cursor=${cursor}`)) as { items: unknown[] };
      if (page.items.length > 0) throw new Error('something changed while nothing should');
    }
  }
  const aPoll = ((await cpuSeconds(roots)) - before) / (ROUNDS * world.phones.length);
  const cores = (aPoll * world.phones.length) / POLL_SECONDS;
  return { name: `${world.phones.length} phones that poll every ${POLL_SECONDS} s, service and database (${(aPoll * 1000).toFixed(2)} ms of CPU a poll)`, ours: cores, yardstick: null, ratio: null, unit: 'cores', target: `under ${MOST_CORES} cores`, met: cores < MOST_CORES };
}

async function latest(url: string, token: string): Promise<string> {
  let cursor: string | null = null;
  for (let more = true; more; ) {
    const page = (await call(url, token, `/v1/sync/pull?limit=500${cursor === null ? '' : `&cursor=${cursor}`}`)) as { cursor: string; more: boolean };
    ({ cursor, more } = page);
  }
  return cursor ?? '';
}

/** The process that made another one: the server's own, of one of its connections. */
async function parentOf(pid: number): Promise<number> {
  return Number(/^PPid:\s+(\d+)$/m.exec(await readFile(`/proc/${pid}/status`, 'utf8').catch(() => ''))?.[1] ?? NaN);
}

/** User and system time of the processes, of their children that run and of those that have ended. */
async function cpuSeconds(roots: readonly number[]): Promise<number> {
  let ticks = 0;
  for (const name of await readdir('/proc').catch(() => [])) {
    const stat = /^\d+$/.test(name) ? await readFile(`/proc/${name}/stat`, 'utf8').catch(() => '') : '';
    // Fields 4 and 14 to 17 of proc(5), counted from behind the name, which may hold spaces.
    const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ').map(Number);
    const [user = 0, system = 0, usersOfEnded = 0, systemsOfEnded = 0] = fields.slice(11, 15);
    if (roots.includes(Number(name))) ticks += user + system + usersOfEnded + systemsOfEnded;
    else if (roots.includes(fields[1] ?? -1)) ticks += user + system;
  }
  return ticks / TICKS_A_SECOND;
}
