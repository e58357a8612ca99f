import { chmod, readFile, stat, symlink } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { StartError } from '../../config/start-error.js';
import { failureCode, failureReason } from './failure-reason.js';

interface Link {
  readonly source: string;
  readonly target: string;
}

/**
 * Makes the package's `native` folder whole: a npm package can't hold symbolic links, its install script
 * makes them, and npm may have been told to run no install scripts. Without them the server does not load.
 */
export async function repairNative(native: string): Promise<void> {
  const text = await readFile(join(native, 'pg-symlinks.json'), 'utf8').catch(() => '[]');
  const links = JSON.parse(text) as Link[];
  try {
    // The list names files from the package's folder, as `native/lib/…`.
    for (const { source, target } of links) await restore(join(native, '..', target), basename(source));
    for (const program of ['initdb', 'postgres']) await makeExecutable(join(native, 'bin', program));
  } catch (error) {
    throw new StartError(
      `The database server in ${dirname(native)} is incomplete and can't be repaired: ${failureReason(error)}. ` +
        'Run "npm ci" as the user that owns this folder.',
    );
  }
}

async function restore(link: string, source: string): Promise<void> {
  try {
    await stat(link);
  } catch {
    await symlink(source, link).catch((error: unknown) => {
      // Another start may have made it in the meantime.
      if (failureCode(error) !== 'EEXIST') throw error;
    });
  }
}

async function makeExecutable(program: string): Promise<void> {
  const { mode } = await stat(program);
  // Only when needed: on a read-only file system even a needless chmod fails.
  if ((mode & 0o111) === 0) await chmod(program, 0o755);
}
