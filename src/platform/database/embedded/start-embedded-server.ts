import { realpath } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import { StartError } from '../../config/start-error.js';
import { findBinaries } from './binaries.js';
import { ensureDataFolder, findCluster, noteCluster, placeNewCluster } from './cluster-place.js';
import { checkExistingCluster } from './existing-cluster.js';
import { chooseIdentity, type Identity } from './identity.js';
import { initialiseCluster, superuser } from './initialise-cluster.js';
import { stopOrphan } from './orphan.js';
import { makePassword, readPassword } from './password.js';
import { ServerLog } from './server-log.js';
import { acquireServiceLock, type ServiceLock } from './service-lock.js';
import { launch } from './launch.js';

/** A PostgreSQL server that belongs to this process. */
export interface EmbeddedServer {
  /** The owner's (superuser's) address of the database `rillbook`. */
  readonly url: string;
  /** The folder of its files: in the data folder, or where the server's user may go. */
  readonly cluster: string;
  /** Stops the server (open transactions are rolled back) and gives the data folder free. */
  stop(): Promise<void>;
}

export interface EmbeddedServerOptions {
  /** The service's data folder; made when it isn't there. */
  readonly dataDir: string;
  /** Takes lines for the person at the terminal. */
  readonly log: (line: string) => void;
  /** `false` for tests only: faster, and a power cut may destroy the database. */
  readonly durable?: boolean;
  /** Called when the server is back after a crash, on the same address. */
  readonly onRestart?: () => void;
  /** Called when it crashed too often to go on. Left out, the process is asked to end by SIGTERM. */
  readonly onGiveUp?: (reason: StartError) => void;
}

/**
 * Starts the embedded server, or comes back to the one of this data folder.
 * @throws StartError in sentences for the user; then nothing keeps running and the folder is free
 */
export async function startEmbeddedServer(options: EmbeddedServerOptions): Promise<EmbeddedServer> {
  requirePosix();
  const given = resolve(options.dataDir);
  await ensureDataFolder(given, process.getuid?.() === 0);
  const dataDir = await realpath(given);
  const locks: ServiceLock[] = [];
  const unlock = async (): Promise<void> => {
    for (const lock of locks.reverse()) await lock.release();
  };
  try {
    locks.push(await acquireServiceLock(dataDir));
    return await open(dataDir, options, locks, unlock);
  } catch (error) {
    await unlock();
    throw error;
  }
}

async function open(
  dataDir: string,
  options: EmbeddedServerOptions,
  locks: ServiceLock[],
  unlock: () => Promise<void>,
): Promise<EmbeddedServer> {
  const existing = await findCluster(dataDir);
  const identity = chooseIdentity(existing);
  const cluster = existing ?? (await placeNewCluster(dataDir, identity));
  // A copied data folder brings its note along, and then two folders lead to one cluster.
  if (dirname(cluster) !== dataDir) locks.push(await acquireServiceLock(dirname(cluster)));
  const { binaries, password } = await prepare(dataDir, cluster, existing !== undefined, identity, options);
  await stopOrphan(cluster, options.log);
  const server = await launch({
    binaries,
    identity,
    cluster,
    user: superuser,
    password,
    serverLog: new ServerLog(dataDir),
    durable: options.durable ?? true,
    log: options.log,
    onRestart: options.onRestart ?? ((): void => undefined),
    onGiveUp: options.onGiveUp ?? endProcess(options.log),
  });
  return {
    url: server.url,
    cluster,
    stop: async () => {
      await server.stop();
      await unlock();
    },
  };
}

async function prepare(
  dataDir: string,
  cluster: string,
  exists: boolean,
  identity: Identity | undefined,
  options: EmbeddedServerOptions,
) {
  const binaries = await findBinaries(identity);
  if (exists) {
    await checkExistingCluster(cluster, binaries.major, identity);
    return { binaries, password: await readPassword(dataDir) };
  }
  options.log(`Making a new database in ${cluster}…`);
  const password = await makePassword(dataDir);
  await initialiseCluster({ binaries, identity, cluster, password, durable: options.durable ?? true });
  await noteCluster(dataDir, cluster);
  return { binaries, password };
}

function endProcess(log: (line: string) => void): (reason: StartError) => void {
  return (reason) => {
    log(reason.message);
    process.exitCode = 1;
    process.kill(process.pid, 'SIGTERM');
  };
}

function requirePosix(): void {
  if (process.platform !== 'win32') return;
  throw new StartError(
    'The embedded database server runs on Linux and macOS. On Windows set DATABASE_URL to a PostgreSQL 18 server.',
  );
}
