import { spawnSync } from 'node:child_process';
import { readFileSync, readdirSync, readlinkSync } from 'node:fs';
import { setTimeout as delay } from 'node:timers/promises';
import { failureCode } from './failure-reason.js';

/** Fields of /proc/<pid>/stat after the command name, which may itself hold spaces and brackets. */
function statFields(pid: number): string[] | undefined {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
    return stat.slice(stat.lastIndexOf(')') + 2).split(' ');
  } catch {
    return undefined;
  }
}

function askPs(pid: number, column: string): string | undefined {
  const text = spawnSync('ps', ['-o', `${column}=`, '-p', String(pid)], { encoding: 'utf8' }).stdout;
  return typeof text === 'string' && text.trim() !== '' ? text.trim() : undefined;
}

/** Whether a process still runs. One that is dead but not yet collected by its parent does not. */
export function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
  } catch (error) {
    if (failureCode(error) !== 'EPERM') return false;
  }
  // In a container whose first process never collects orphans, a dead one stays visible for ever.
  return statFields(pid)?.[0] !== 'Z';
}

/**
 * A mark that tells a process from a later one with the same number: clock ticks since boot on Linux,
 * the start date elsewhere; `undefined` when it can't be known.
 */
export function startMark(pid: number): string | undefined {
  if (process.platform === 'linux') return statFields(pid)?.[19];
  return askPs(pid, 'lstart');
}

/** The command line with its arguments apart by blanks, or `undefined` when it can't be known. */
export function commandLine(pid: number): string | undefined {
  if (process.platform !== 'linux') return askPs(pid, 'args');
  try {
    return readFileSync(`/proc/${pid}/cmdline`, 'utf8').replaceAll('\0', ' ').trim();
  } catch {
    return undefined;
  }
}

/**
 * PostgreSQL's processes that work in a cluster folder. Every one of them makes it its working
 * directory, and each is a session leader, so neither the parent nor the group would find them after
 * the postmaster died. Linux only; elsewhere the list is empty.
 */
export function processesIn(cluster: string): number[] {
  if (process.platform !== 'linux') return [];
  return readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name))
    .map(Number)
    .filter((pid) => workingFolder(pid) === cluster && isAlive(pid) && isPostgres(pid));
}

function workingFolder(pid: number): string | undefined {
  try {
    return readlinkSync(`/proc/${pid}/cwd`);
  } catch {
    return undefined;
  }
}

// A shell that someone left standing in the folder must not be killed with the rest.
function isPostgres(pid: number): boolean {
  try {
    return readFileSync(`/proc/${pid}/comm`, 'utf8').trim() === 'postgres';
  } catch {
    return false;
  }
}

/** Sends a signal; a process that is gone already is no failure. */
export function sendSignal(pid: number, signal: NodeJS.Signals): void {
  try {
    process.kill(pid, signal);
  } catch (error) {
    if (failureCode(error) !== 'ESRCH') throw error;
  }
}

/** Waits until the condition holds. @returns whether it did within `milliseconds` */
export async function waitUntil(condition: () => boolean, milliseconds: number): Promise<boolean> {
  const deadline = Date.now() + milliseconds;
  while (!condition()) {
    if (Date.now() >= deadline) return false;
    await delay(20);
  }
  return true;
}
