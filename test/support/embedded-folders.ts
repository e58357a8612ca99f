import { readFileSync, readdirSync } from 'node:fs';
import { chmod, mkdtemp, readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { findCluster } from '../../src/platform/database/embedded/cluster-place.js';
import { folderPrefix, removeDataFolder } from './abandoned-folders.js';

const made: string[] = [];

/** A new data folder. `closed` is one that nobody but its owner may enter. */
export async function newDataFolder(kind: 'open' | 'closed' = 'open'): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), folderPrefix));
  await chmod(folder, kind === 'open' ? 0o711 : 0o700);
  made.push(folder);
  return folder;
}

export async function removeDataFolders(): Promise<void> {
  for (const folder of made.splice(0)) await removeDataFolder(folder);
}

export async function clusterOf(dataDir: string): Promise<string> {
  const cluster = await findCluster(dataDir);
  if (cluster === undefined) throw new Error(`There is no cluster in ${dataDir}.`);
  return cluster;
}

export async function postmasterPid(dataDir: string): Promise<number> {
  const text = await readFile(join(await clusterOf(dataDir), 'postmaster.pid'), 'utf8');
  return Number(text.split('\n')[0]);
}

/** Processes whose command line has these words; from /proc, since small systems have no `ps`. */
export function processesWith(words: string): number[] {
  return readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name))
    .filter((pid) => commandLineOf(pid).includes(words))
    .map(Number);
}

function commandLineOf(pid: string): string {
  try {
    return readFileSync(`/proc/${pid}/cmdline`, 'utf8').replaceAll('\0', ' ');
  } catch {
    return '';
  }
}

/** Runs one statement on a connection of its own. */
export async function ask(url: string, sql: string): Promise<unknown[]> {
  const client = new pg.Client({ connectionString: url });
  // A killed server ends the connection twice: as the statement's failure, and as an event of its own.
  client.on('error', () => undefined);
  await client.connect();
  try {
    return (await client.query({ text: sql, rowMode: 'array' })).rows.flat();
  } finally {
    await client.end();
  }
}
