import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { StartError } from '../../config/start-error.js';
import type { Binaries } from './binaries.js';
import { failureReason } from './failure-reason.js';
import { guard } from './guard.js';
import { plainEnvironment, type Identity } from './identity.js';
import type { ServerLog } from './server-log.js';
import { serverSettings } from './server-settings.js';

/** A running server process. */
export interface Postmaster {
  readonly pid: number;
  /** Resolves when it has ended, with words such as "signal SIGKILL". */
  readonly ended: Promise<string>;
  hasEnded(): boolean;
}

export interface PostmasterOptions {
  readonly binaries: Binaries;
  readonly identity: Identity | undefined;
  readonly cluster: string;
  readonly port: number;
  readonly durable: boolean;
  readonly serverLog: ServerLog;
}

/**
 * Starts the server process in a session of its own: Ctrl-C in the terminal reaches the service only,
 * which stops the server after the requests in flight are done.
 * @throws StartError when the process can't be started at all
 */
export async function spawnPostmaster(options: PostmasterOptions): Promise<Postmaster> {
  const { binaries, identity, cluster, serverLog } = options;
  serverLog.begin();
  const child = spawn(binaries.postgres, ['-D', cluster, ...serverSettings(options)], {
    ...identity,
    cwd: '/',
    env: plainEnvironment,
    detached: true,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  child.stderr.setEncoding('utf8').on('data', (text: string) => serverLog.write(text));
  try {
    await once(child, 'spawn');
  } catch (error) {
    throw new StartError(`The database server can't be started: ${failureReason(error)}.`);
  }
  const pid = child.pid as number;
  const release = guard(pid, identity);
  let running = true;
  const ended = new Promise<string>((resolve) => {
    // Not 'close': a straggling child of a killed server holds the pipe open.
    child.once('exit', (code, signal) => {
      running = false;
      release();
      resolve(signal === null ? `exit code ${code ?? 'unknown'}` : `signal ${signal}`);
    });
  });
  return { pid, ended, hasEnded: () => !running };
}
