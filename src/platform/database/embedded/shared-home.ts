import { chmod, mkdir } from 'node:fs/promises';
import { StartError } from '../../config/start-error.js';
import { failureReason } from './failure-reason.js';

/** Where root keeps what the server's user must reach when the clone or the data folder is closed to it. */
export const sharedHome = '/var/lib/rillbook';

/** @throws StartError when the folder can't be made, as on a read-only system */
export async function ensureSharedHome(): Promise<void> {
  try {
    const made = await mkdir(sharedHome, { recursive: true });
    // Root's umask may be strict, and then nobody else could get in.
    if (made !== undefined) await chmod(sharedHome, 0o755);
  } catch (error) {
    throw new StartError(
      `The database server runs as an unprivileged user that may not enter this folder, and ${sharedHome} ` +
        `can't be made instead: ${failureReason(error)}. Start from a folder that others may enter, ` +
        'start as an ordinary user, or set DATABASE_URL to a server of your own.',
    );
  }
}
