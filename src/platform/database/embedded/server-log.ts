import { appendFileSync, renameSync, statSync } from 'node:fs';
import { join } from 'node:path';

const rotateAtBytes = 1_000_000;

/** The server's own log: `postgres.log` in the data folder, and its last lines for a failure's message. */
export class ServerLog {
  private readonly path: string;
  private lines: string[] = [];

  constructor(dataDir: string) {
    this.path = join(dataDir, 'postgres.log');
    try {
      if (statSync(this.path).size > rotateAtBytes) renameSync(this.path, `${this.path}.1`);
    } catch {
      // No log yet.
    }
  }

  write(text: string): void {
    this.lines = [...this.lines, ...text.trimEnd().split('\n')].slice(-30);
    try {
      appendFileSync(this.path, text);
    } catch {
      // A full disk must not take the service down for want of a log; the last lines are kept in memory.
    }
  }

  /** Forgets earlier lines, so that a failure's message quotes its own start only. */
  begin(): void {
    this.lines = [];
  }

  includes(words: string): boolean {
    return this.lines.some((line) => line.includes(words));
  }

  lastLines(): string {
    return this.lines.slice(-6).join('\n  ');
  }
}
