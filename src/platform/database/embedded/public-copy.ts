import { createHash } from 'node:crypto';
import { constants } from 'node:fs';
import { chmod, cp, lstat, readdir, rename, rm, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { StartError } from '../../config/start-error.js';
import { failureReason } from './failure-reason.js';
import { ensureSharedHome, sharedHome } from './shared-home.js';

/**
 * Copies the server once to a place that every user may read, for a clone that only root may enter.
 * The copy appears under its name complete or not at all: an interrupted one is never run.
 * @returns the folder of the copy
 */
export async function copyForEveryone(native: string, version: string): Promise<string> {
  await ensureSharedHome();
  const target = join(sharedHome, `postgres-${version}-${await fingerprint(native)}`);
  if (await exists(target)) return target;
  const unfinished = `${target}.unfinished-${process.pid}`;
  try {
    await cp(native, unfinished, { recursive: true, verbatimSymlinks: true, mode: constants.COPYFILE_FICLONE });
    await openToAll(unfinished);
    await rename(unfinished, target);
  } catch (error) {
    await rm(unfinished, { recursive: true, force: true });
    // Another start was faster: its copy is as good.
    if (await exists(target)) return target;
    throw new StartError(`The database server can't be copied to ${target}: ${failureReason(error)}.`);
  }
  return target;
}

/** Names and sizes are enough: they tell two builds of one version apart, and nobody but root writes there. */
async function fingerprint(native: string): Promise<string> {
  const names = await readdir(native, { recursive: true });
  const hash = createHash('sha256');
  for (const name of names.sort()) {
    const entry = await lstat(join(native, name));
    if (!entry.isDirectory()) hash.update(`${name}\0${entry.size}\n`);
  }
  return hash.digest('hex').slice(0, 12);
}

/** An installation made under a strict umask is readable by its owner only. */
async function openToAll(root: string): Promise<void> {
  for (const name of ['', ...(await readdir(root, { recursive: true }))]) {
    const path = join(root, name);
    const entry = await lstat(path);
    if (entry.isSymbolicLink()) continue;
    const program = entry.isDirectory() || (entry.mode & 0o100) !== 0;
    await chmod(path, program ? 0o755 : 0o644);
  }
}

async function exists(path: string): Promise<boolean> {
  return stat(path).then(
    () => true,
    () => false,
  );
}
