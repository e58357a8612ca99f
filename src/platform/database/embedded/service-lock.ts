import { readFile, rename, unlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as delay } from 'node:timers/promises';
import { StartError } from '../../config/start-error.js';
import { failureCode, failureReason } from './failure-reason.js';
import { isAlive, startMark } from './processes.js';

/** One service per folder: two on one cluster would stop each other's database as an orphan. */
export interface ServiceLock {
  release(): Promise<void>;
}

interface Holder {
  readonly pid: number;
  readonly startMark: string | null;
}

/** @throws StartError when a living process holds the folder or the folder can't be written */
export async function acquireServiceLock(folder: string): Promise<ServiceLock> {
  const path = join(folder, 'service.lock');
  const mine = `${JSON.stringify({ pid: process.pid, startMark: startMark(process.pid) ?? null })}\n`;
  for (let attempt = 1; attempt <= 40; attempt += 1) {
    if (await create(path, mine, folder)) return { release: () => release(path, mine) };
    const text = await readFile(path, 'utf8').catch(() => '');
    const holder = parse(text);
    if (holder !== undefined && holds(holder)) throw inUse(folder, holder.pid);
    // An unreadable lock may be one that is being written this moment: give its owner half a second.
    if (holder !== undefined || attempt > 10) await takeAway(path, text);
    else await delay(50);
  }
  throw new StartError(`The lock ${path} can't be taken over. Remove the file when no Rillbook runs on it.`);
}

async function create(path: string, text: string, folder: string): Promise<boolean> {
  try {
    await writeFile(path, text, { flag: 'wx' });
    return true;
  } catch (error) {
    if (failureCode(error) === 'EEXIST') return false;
    // On a full disk the file is made and can't be filled: an empty lock would hold up the next start.
    await unlink(path).catch(() => undefined);
    throw cannotWrite(folder, error);
  }
}

function parse(text: string): Holder | undefined {
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value !== 'object' || value === null || !('pid' in value)) return undefined;
    const mark = 'startMark' in value && typeof value.startMark === 'string' ? value.startMark : null;
    return typeof value.pid === 'number' ? { pid: value.pid, startMark: mark } : undefined;
  } catch {
    return undefined;
  }
}

function holds(holder: Holder): boolean {
  if (!isAlive(holder.pid)) return false;
  const now = startMark(holder.pid);
  // The number of a dead service may by now belong to somebody else's process.
  return holder.startMark === null || now === undefined || now === holder.startMark;
}

/** Removes a stale lock, by a rename first: two that start at once must not remove each other's new one. */
async function takeAway(path: string, seen: string): Promise<void> {
  const aside = `${path}.stale-${process.pid}`;
  try {
    await rename(path, aside);
    if ((await readFile(aside, 'utf8')) === seen) await unlink(aside);
    else await rename(aside, path);
  } catch (error) {
    if (failureCode(error) !== 'ENOENT') {
      throw new StartError(`The stale lock ${path} can't be removed: ${failureReason(error)}.`);
    }
  }
}

async function release(path: string, mine: string): Promise<void> {
  const text = await readFile(path, 'utf8').catch(() => '');
  if (text === mine) await unlink(path).catch(() => undefined);
}

function cannotWrite(folder: string, error: unknown): StartError {
  const full = ['ENOSPC', 'EDQUOT'].includes(failureCode(error) ?? '');
  return new StartError(
    `Rillbook can't write to its data folder ${folder}: ${failureReason(error)}. ` +
      (full ? 'Free some space, or name' : 'Give this user the right to write there, or name') +
      ' another folder with RILLBOOK_DATA.',
  );
}

function inUse(folder: string, pid: number): StartError {
  return new StartError(
    `The data folder ${folder} is in use by process ${pid}, another Rillbook. ` +
      'Stop that one first, or give this one a folder of its own with RILLBOOK_DATA.',
  );
}
