import { setTimeout as delay } from 'node:timers/promises';
import { StartError } from '../../config/start-error.js';
import { failureReason } from './failure-reason.js';
import { stopProcess } from './orphan.js';
import type { Postmaster } from './postmaster.js';

const windowMs = 60_000;
const crashesInWindow = 5;

export interface SupervisorOptions {
  /** Starts the server again on the same port and resolves when it answers. */
  readonly restart: () => Promise<Postmaster>;
  readonly log: (line: string) => void;
  readonly onRestart: () => void;
  readonly onGiveUp: (reason: StartError) => void;
}

/** Brings the server back when it dies, until it is told to stop or crashes too often. */
export class Supervisor {
  private stopping = false;
  private crashes: number[] = [];
  private recovery: Promise<void> = Promise.resolve();

  constructor(
    private postmaster: Postmaster,
    private readonly options: SupervisorOptions,
  ) {
    this.watch();
  }

  /** Resolves when no server process is left. May be called during a recovery, which then ends first. */
  async stop(): Promise<void> {
    this.stopping = true;
    await this.recovery;
    if (!this.postmaster.hasEnded()) await stopProcess(this.postmaster.pid, 15_000);
    await this.postmaster.ended;
  }

  private watch(): void {
    void this.postmaster.ended.then((how) => {
      if (!this.stopping) this.recovery = this.recover(how);
    });
  }

  private async recover(how: string): Promise<void> {
    this.options.log(`The database server ended unexpectedly (${how}); starting it again…`);
    while (!this.stopping && !this.crashesTooOften(how)) {
      try {
        this.postmaster = await this.options.restart();
      } catch (error) {
        how = failureReason(error);
        this.options.log(how);
        await delay(500);
        continue;
      }
      this.watch();
      if (this.stopping) return;
      this.options.log('The database server is back.');
      this.options.onRestart();
      return;
    }
  }

  private crashesTooOften(how: string): boolean {
    const now = Date.now();
    this.crashes = [...this.crashes.filter((at) => now - at < windowMs), now];
    if (this.crashes.length < crashesInWindow) return false;
    this.options.onGiveUp(
      new StartError(
        `The database server crashed ${crashesInWindow} times within a minute and is not started again. ` +
          `The last time: ${how.replace(/\.$/, '')}. See postgres.log in the data folder.`,
      ),
    );
    return true;
  }
}
