import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { chmod, chown, mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { StartError } from '../../config/start-error.js';
import type { Binaries } from './binaries.js';
import { removeUnfinished, unfinishedMark } from './cluster-place.js';
import { failureReason } from './failure-reason.js';
import { guard } from './guard.js';
import { plainEnvironment, type Identity } from './identity.js';

export const superuser = 'postgres';

export interface NewCluster {
  readonly binaries: Binaries;
  readonly identity: Identity | undefined;
  readonly cluster: string;
  readonly password: string;
  readonly durable: boolean;
}

/**
 * Makes a cluster beside its place and renames it when it is complete, so that an interrupted first start
 * leaves nothing that looks like a database.
 * @throws StartError with the last words of `initdb`, such as those of a full disk
 */
export async function initialiseCluster(options: NewCluster): Promise<void> {
  const { cluster, identity } = options;
  const unfinished = `${cluster}${unfinishedMark}${process.pid}`;
  const passwordFile = `${cluster}.password`;
  await removeUnfinished(cluster);
  try {
    await mkdir(unfinished, { mode: 0o700 });
    await writeFile(passwordFile, `${options.password}\n`, { mode: 0o600 });
    if (identity !== undefined) {
      await chown(unfinished, identity.uid, identity.gid);
      await chown(passwordFile, identity.uid, identity.gid);
    }
    await chmod(unfinished, 0o700);
    await runInitdb(options, unfinished, passwordFile);
    await rename(unfinished, cluster);
  } catch (error) {
    await removeUnfinished(cluster).catch(() => undefined);
    if (error instanceof StartError) throw error;
    throw new StartError(`The database can't be made in ${cluster}: ${failureReason(error)}.`);
  } finally {
    await rm(passwordFile, { force: true });
  }
}

async function runInitdb(options: NewCluster, folder: string, passwordFile: string): Promise<void> {
  // The built-in provider sorts alike on every system and for ever; the system's locale only tells
  // letters from other signs, and macOS has no C.UTF-8.
  const letters = process.platform === 'darwin' ? 'en_US.UTF-8' : 'C.UTF-8';
  const flags = [
    `--pgdata=${folder}`,
    `--username=${superuser}`,
    `--pwfile=${passwordFile}`,
    '--auth=scram-sha-256',
    '--encoding=UTF8',
    `--locale=${letters}`,
    '--lc-messages=C',
    '--locale-provider=builtin',
    '--builtin-locale=C.UTF-8',
    '--data-checksums',
    ...(options.durable ? [] : ['--no-sync']),
  ];
  // A session of its own: Ctrl-C must not cut it off behind our back; the guard ends it if we end.
  const child = spawn(options.binaries.initdb, flags, {
    ...options.identity,
    cwd: '/',
    env: plainEnvironment,
    detached: true,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let words = '';
  child.stderr.setEncoding('utf8').on('data', (text: string) => (words += text));
  const release = child.pid === undefined ? undefined : guard(child.pid, options.identity);
  const [code] = (await once(child, 'close')) as [number | null];
  release?.();
  if (code === 0) return;
  throw new StartError(`The database can't be made in ${options.cluster}. PostgreSQL says:\n  ${telling(words)}`);
}

/** The lines that name the failure; `initdb` ends with what it cleaned up. */
function telling(words: string): string {
  const lines = words.trim().split('\n');
  const failures = lines.filter((line) => /error:|ERROR|FATAL|PANIC|HINT/.test(line));
  return (failures.length > 0 ? failures : lines).slice(-4).join('\n  ');
}
