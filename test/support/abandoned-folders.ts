import { readFile, readdir, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { findCluster } from '../../src/platform/database/embedded/cluster-place.js';
import { isAlive } from '../../src/platform/database/embedded/processes.js';

/** Begins the name of every folder that the tests make in the system's folder for temporary files. */
export const folderPrefix = 'rillbook-test-';

/** Younger ones may be between their making and their lock. */
const ageMs = 60_000;

/** Removes what killed test runs left behind: each such folder holds some 40 MB. */
export async function sweepAbandoned(): Promise<void> {
  const names = await readdir(tmpdir());
  for (const name of names.filter((each) => each.startsWith(folderPrefix))) {
    const folder = join(tmpdir(), name);
    if (await isAbandoned(folder)) await removeDataFolder(folder).catch(() => undefined);
  }
}

/** Removes a data folder, and the cluster that lies elsewhere when its server's user may not enter it. */
export async function removeDataFolder(folder: string): Promise<void> {
  const cluster = await findCluster(folder).catch(() => undefined);
  if (cluster !== undefined && dirname(cluster) !== folder) await rm(dirname(cluster), { recursive: true });
  await rm(folder, { recursive: true, force: true });
}

/** Ours, old, and without a living service: the lock of one that was killed names a dead process. */
async function isAbandoned(folder: string): Promise<boolean> {
  try {
    const { uid, mtimeMs } = await stat(folder);
    if (uid !== process.getuid?.() || Date.now() - mtimeMs < ageMs) return false;
    const lock = await readFile(join(folder, 'service.lock'), 'utf8').catch(() => undefined);
    return lock === undefined || !isAlive((JSON.parse(lock) as { pid: number }).pid);
  } catch {
    return false;
  }
}
