import { type ChildProcess, fork } from 'node:child_process';
import { chmod, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { startEmbeddedServer } from '../../src/platform/database/embedded/index.js';
import { provision } from '../../src/platform/database/provision.js';
import type { Measurement } from '../measure.js';
import { benchPolling } from './polling.js';
import { benchPull } from './pull.js';
import { benchPush } from './push.js';
import { makeSyncWorld, type SyncWorld } from './world.js';

/** The same flags as `npm start`. */
const NODE_FLAGS = ['--max-semi-space-size=8'];

/** Push, pull and polling of phones, against the built service in a process of its own on a durable server. */
export async function benchSync(): Promise<Measurement[]> {
  const folder = await mkdtemp(path.join(tmpdir(), 'rillbook-bench-'));
  // As root the server runs as another user, who must get in; elsewhere the cluster would stay behind.
  await chmod(folder, 0o711);
  const server = await startEmbeddedServer({ dataDir: folder, log: () => undefined });
  let child: ChildProcess | undefined;
  let world: SyncWorld | undefined;
  try {
    const database = await provision(server.url);
    world = await makeSyncWorld(database, server.url);
    child = fork(fileURLToPath(new URL('../lists/service-server.mjs', import.meta.url)), { env: { ...process.env, BENCH_INPUT: JSON.stringify({ database }) }, execArgv: NODE_FLAGS });
    const url = await ready(child);
    const { push, ratio } = await benchPush(world, url, database.serviceUrl);
    const pulls = await benchPull(world, url);
    const polling = await benchPolling(world, url, child.pid ?? 0);
    return [push, ratio, ...pulls, polling];
  } finally {
    child?.disconnect();
    await world?.close();
    await server.stop();
    await rm(folder, { recursive: true, force: true });
  }
}

function ready(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    child.once('message', (message) => resolve((message as { url: string }).url));
    child.once('exit', (code) => reject(new Error(`the service ended with ${code}`)));
  });
}
