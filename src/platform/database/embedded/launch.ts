import type { StartError } from '../../config/start-error.js';
import { freePort } from './free-port.js';
import { clearStragglers, stopProcess } from './orphan.js';
import { spawnPostmaster, type Postmaster, type PostmasterOptions } from './postmaster.js';
import { addressOf, waitUntilReady } from './ready.js';
import { Supervisor } from './supervisor.js';

export interface LaunchOptions extends Omit<PostmasterOptions, 'port'> {
  readonly user: string;
  readonly password: string;
  readonly log: (line: string) => void;
  readonly onRestart: () => void;
  readonly onGiveUp: (reason: StartError) => void;
}

const portTries = 5;

/** Starts the server on a free port and keeps it running. @throws StartError */
export async function launch(options: LaunchOptions): Promise<{ url: string; stop: () => Promise<void> }> {
  for (let attempt = 1; ; attempt += 1) {
    const port = await freePort();
    const url = addressOf(port, options.user, options.password);
    try {
      const supervisor = new Supervisor(await startOn(port, url, options), {
        ...options,
        restart: async () => {
          await clearStragglers(options.cluster);
          return startOn(port, url, options);
        },
      });
      return { url, stop: () => supervisor.stop() };
    } catch (error) {
      // Somebody took the port between the choice and the start.
      if (attempt === portTries || !options.serverLog.includes('Address already in use')) throw error;
    }
  }
}

async function startOn(port: number, url: string, options: LaunchOptions): Promise<Postmaster> {
  const postmaster = await spawnPostmaster({ ...options, port });
  try {
    await waitUntilReady(url, postmaster, options.serverLog);
    return postmaster;
  } catch (error) {
    if (!postmaster.hasEnded()) await stopProcess(postmaster.pid, 10_000);
    throw error;
  }
}
