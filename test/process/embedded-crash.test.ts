import { spawn, spawnSync, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { startEmbeddedServer, type EmbeddedServer } from '../../src/platform/database/embedded/index.js';
import { isAlive, startMark, waitUntil } from '../../src/platform/database/embedded/processes.js';
import {
  ask,
  clusterOf,
  newDataFolder,
  postmasterPid,
  processesWith,
  removeDataFolders,
} from '../support/embedded-folders.js';

const running: EmbeddedServer[] = [];
const holders: ChildProcess[] = [];

async function start(dataDir: string, hooks: { onRestart?: () => void; onGiveUp?: (error: Error) => void } = {}) {
  const server = await startEmbeddedServer({ dataDir, log: () => undefined, ...hooks });
  running.push(server);
  return server;
}

/** Another process that holds the server of this folder. */
async function hold(dataDir: string): Promise<{ holder: ChildProcess; url: string }> {
  const holder = spawn(
    process.execPath,
    ['--import', './scripts/lib/typescript.mjs', 'test/support/hold-server.ts', dataDir],
    { stdio: ['ignore', 'pipe', 'inherit'] },
  );
  holders.push(holder);
  const [output] = (await once(holder.stdout, 'data')) as [Buffer];
  return { holder, url: output.toString().trim() };
}

async function kill(child: ChildProcess): Promise<void> {
  child.kill('SIGKILL');
  await once(child, 'exit');
}

// One cluster for all: making one takes most of a second, coming back to it a tenth.
let folder: string;

beforeAll(async () => {
  folder = await newDataFolder();
});

afterEach(async () => {
  for (const holder of holders.splice(0)) holder.kill('SIGKILL');
  for (const server of running.splice(0)) await server.stop();
});

afterAll(removeDataFolders);

describe('the embedded server after a crash', () => {
  it('comes back on the same address with every committed row when it is killed', async () => {
    let restarts = 0;
    const { url } = await start(folder, { onRestart: () => (restarts += 1) });
    await ask(url, 'CREATE TABLE kept AS SELECT 42 AS answer');
    const busy = ask(url, 'SELECT count(*) FROM generate_series(1, 1e12::bigint)').catch(String);
    const before = await postmasterPid(folder);
    process.kill(before, 'SIGKILL');
    expect(await waitUntil(() => restarts === 1, 8_000)).toBe(true);
    expect(await postmasterPid(folder)).not.toBe(before);
    expect(await ask(url, 'SELECT answer FROM kept')).toEqual([42]);
    expect(await busy).toMatch(/terminating connection|terminated|ECONNRESET|connection error/);
  });

  it('gives up after the fifth crash within a minute, and can still be stopped', async () => {
    const crash = async (): Promise<void> => void process.kill(await postmasterPid(folder), 'SIGKILL');
    const reason = await new Promise<Error>((resolve, reject) => {
      const again = (): void => void crash().catch(reject);
      start(folder, { onRestart: again, onGiveUp: resolve }).then(again, reject);
    });
    expect(reason.message).toMatch(/crashed 5 times within a minute .* signal SIGKILL/);
    await expect(running[0]?.stop()).resolves.toBeUndefined();
  });

  it('stops by itself when its service is killed', async () => {
    const { holder } = await hold(folder);
    const pid = await postmasterPid(folder);
    await kill(holder);
    expect(await waitUntil(() => !isAlive(pid), 8_000)).toBe(true);
  });

  it('is stopped and started anew when it outlived its service', async () => {
    const { holder, url } = await hold(folder);
    await ask(url, 'CREATE TABLE kept_by_orphan AS SELECT 42 AS answer');
    const orphan = await postmasterPid(folder);
    const guards = processesWith(`rillbook-guard ${orphan} `);
    expect(guards).toHaveLength(1);
    for (const guard of guards) process.kill(guard, 'SIGKILL');
    await kill(holder);
    expect(isAlive(orphan)).toBe(true);
    const next = await start(folder);
    expect(isAlive(orphan)).toBe(false);
    expect(await ask(next.url, 'SELECT answer FROM kept_by_orphan')).toEqual([42]);
  });

  it('starts over a note of its predecessor whose process number went to another process', async () => {
    await (await start(folder)).stop();
    const note = join(await clusterOf(folder), 'postmaster.pid');
    await writeFile(note, `${process.pid}\n`);
    expect(await ask((await start(folder)).url, 'SELECT 1')).toEqual([1]);
  });

  it('refuses a folder that another process holds, and leaves that one alone', async () => {
    const { holder, url } = await hold(folder);
    await expect(start(folder)).rejects.toThrow(`in use by process ${holder.pid}`);
    expect(await ask(url, 'SELECT 1')).toEqual([1]);
  });

  it('takes over the lock of a process that is gone', async () => {
    const gone = spawnSync('/bin/true').pid;
    await writeFile(join(folder, 'service.lock'), JSON.stringify({ pid: gone, startMark: '1' }));
    expect(await ask((await start(folder)).url, 'SELECT 1')).toEqual([1]);
  });

  it('takes over a lock whose process number went to another process', async () => {
    const lock = join(folder, 'service.lock');
    await writeFile(lock, JSON.stringify({ pid: process.ppid, startMark: startMark(process.ppid) }));
    await expect(start(folder)).rejects.toThrow(`in use by process ${process.ppid}`);
    await writeFile(lock, JSON.stringify({ pid: process.ppid, startMark: 'earlier' }));
    expect(await ask((await start(folder)).url, 'SELECT 1')).toEqual([1]);
  });

  it('takes over a lock that was cut off while it was written', async () => {
    await writeFile(join(folder, 'service.lock'), '');
    expect(await ask((await start(folder)).url, 'SELECT 1')).toEqual([1]);
  });
});
