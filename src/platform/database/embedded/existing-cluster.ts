import { lchown, readFile, readdir, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { StartError } from '../../config/start-error.js';
import { mayEnter, type Identity } from './identity.js';

/** @throws StartError when the cluster can't be opened by this version or by this user */
export async function checkExistingCluster(
  cluster: string,
  major: string,
  identity: Identity | undefined,
): Promise<void> {
  const { uid } = await stat(cluster);
  if (identity === undefined && uid !== process.getuid?.()) {
    throw new StartError(
      `The database in ${cluster} belongs to the user with number ${uid}, not to this one. ` +
        'Start Rillbook as the user that made it (or as root), or use another folder with RILLBOOK_DATA.',
    );
  }
  // Root's copy of a data folder, or a restored backup, is root's; the server's user must own it.
  if (identity !== undefined && uid === 0) await giveTo(cluster, identity);
  if (!mayEnter(cluster, identity)) {
    throw new StartError(
      `The database server runs as the user with number ${identity?.uid ?? uid}, which may not enter ${cluster}. ` +
        'Let others pass through the folders above it (chmod o+x), or move the data folder and set RILLBOOK_DATA.',
    );
  }
  const made = (await readFile(join(cluster, 'PG_VERSION'), 'utf8')).trim();
  if (made !== major) {
    throw new StartError(
      `The database in ${cluster} was made by PostgreSQL ${made}; this Rillbook brings PostgreSQL ${major}, which can't open it. ` +
        `Move it with pg_dump from a PostgreSQL ${made} server, or start the Rillbook version that made it.`,
    );
  }
}

async function giveTo(folder: string, { uid, gid }: Identity): Promise<void> {
  const names = await readdir(folder, { recursive: true });
  for (const name of [...names, '']) await lchown(join(folder, name), uid, gid);
}
