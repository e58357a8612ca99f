import { type ChildProcess, fork } from 'node:child_process';
import { chmod, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { startEmbeddedServer } from '../src/platform/database/embedded/index.js';
import { type Provisioned, provision } from '../src/platform/database/provision.js';

/** The same flags as `npm start`. */
const NODE_FLAGS = ['--max-semi-space-size=8'];
/** BENCH_PROFILE names a folder for CPU profiles of the processes. */
const PROFILE = process.env['BENCH_PROFILE'] === undefined ? [] : ['--cpu-prof', `--cpu-prof-dir=${process.env['BENCH_PROFILE']}`];

export interface Process {
  readonly url: string;
  readonly pid: number;
}

export interface Bench {
  readonly database: Provisioned;
  /** The address of the owner of the tables. */
  readonly ownerUrl: string;
  /** The built service in a process of its own. */
  readonly startService: () => Promise<Process>;
  /** Another server of the bench, with what it is told. */
  readonly start: (file: string, input: object) => Promise<Process>;
}

/** A durable database server for the time of the work, and processes that end with it. */
export async function withDatabase<T>(work: (bench: Bench) => Promise<T>): Promise<T> {
  const folder = await mkdtemp(path.join(tmpdir(), 'rillbook-bench-'));
  // As root the server runs as another user, who must get in; elsewhere the cluster would stay behind.
  await chmod(folder, 0o711);
  const server = await startEmbeddedServer({ dataDir: folder, log: () => undefined });
  const children: ChildProcess[] = [];
  const start = (file: string, input: object): Promise<Process> => {
    const child = fork(fileURLToPath(new URL(file, import.meta.url)), { env: { ...process.env, BENCH_INPUT: JSON.stringify(input) }, execArgv: [...NODE_FLAGS, ...PROFILE] });
    children.push(child);
    return new Promise((resolve, reject) => {
      child.once('message', (message) => resolve({ url: (message as { url: string }).url, pid: child.pid ?? 0 }));
      child.once('exit', (code) => reject(new Error(`${file} ended with ${code}`)));
    });
  };
  try {
    const database = await provision(server.url);
    return await work({ database, ownerUrl: server.url, start, startService: () => start('service-server.mjs', { database }) });
  } finally {
    for (const child of children) if (child.connected) child.disconnect();
    await server.stop();
    await rm(folder, { recursive: true, force: true });
  }
}
