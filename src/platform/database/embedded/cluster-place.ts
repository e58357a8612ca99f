import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { chmod, mkdir, readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { StartError } from '../../config/start-error.js';
import { failureReason } from './failure-reason.js';
import { mayEnter, type Identity } from './identity.js';
import { ensureSharedHome, sharedHome } from './shared-home.js';

const noteName = 'postgres-elsewhere.json';

/** The folder of the existing cluster of this data folder: in it, or where its note says. */
export async function findCluster(dataDir: string): Promise<string | undefined> {
  const note = join(dataDir, noteName);
  if (!existsSync(note)) {
    const inside = join(dataDir, 'postgres');
    return existsSync(join(inside, 'PG_VERSION')) ? inside : undefined;
  }
  const cluster = readNote(await readFile(note, 'utf8').catch(() => ''));
  if (cluster !== undefined && existsSync(join(cluster, 'PG_VERSION'))) return cluster;
  throw new StartError(
    `The note ${note} says that the database is in ${cluster ?? 'an unreadable place'}, but there is none. ` +
      'Put the folder back, or remove the note to begin with an empty database.',
  );
}

function readNote(text: string): string | undefined {
  try {
    const value: unknown = JSON.parse(text);
    const has = typeof value === 'object' && value !== null && 'cluster' in value;
    return has && typeof value.cluster === 'string' ? value.cluster : undefined;
  } catch {
    return undefined;
  }
}

/**
 * Chooses where a new cluster goes: into the data folder when the server's user may enter it, else into
 * the shared home, under a name made from the data folder's path.
 */
export async function placeNewCluster(dataDir: string, identity: Identity | undefined): Promise<string> {
  if (mayEnter(dataDir, identity)) return join(dataDir, 'postgres');
  await ensureSharedHome();
  const name = `data-${createHash('sha256').update(dataDir).digest('hex').slice(0, 16)}`;
  // A data folder that was deleted and made anew must come up empty, and must not reach the old database.
  let home = join(sharedHome, name);
  for (let next = 2; existsSync(join(home, 'postgres')); next += 1) home = join(sharedHome, `${name}-${next}`);
  await mkdir(home, { recursive: true });
  await chmod(home, 0o711);
  return join(home, 'postgres');
}

/** Leaves word in the data folder of a cluster that lies elsewhere: backups and people look there first. */
export async function noteCluster(dataDir: string, cluster: string): Promise<void> {
  if (dirname(cluster) === dataDir) return;
  const why = 'The server runs as an unprivileged user that may not enter this folder. Back up both.';
  await writeFile(join(dataDir, noteName), `${JSON.stringify({ cluster, why }, null, 2)}\n`);
}

/** @throws StartError when the data folder can't be made */
export async function ensureDataFolder(dataDir: string, asRoot: boolean): Promise<void> {
  try {
    const made = await mkdir(dataDir, { recursive: true });
    // Others may pass through to the cluster, which is theirs, and see no name on the way.
    if (made !== undefined && asRoot) await chmod(dataDir, 0o711);
  } catch (error) {
    throw new StartError(
      `The data folder ${dataDir} can't be made: ${failureReason(error)}. ` +
        'Name a folder that this user may write to with RILLBOOK_DATA.',
    );
  }
}

/** Stands between a cluster's name and a process number while it is made, since an `initdb` that was told to end goes on for a moment. */
export const unfinishedMark = '.unfinished-';

/** Removes what interrupted starts left of a cluster that never came to be. */
export async function removeUnfinished(cluster: string): Promise<void> {
  const home = dirname(cluster);
  const begin = `${basename(cluster)}${unfinishedMark}`;
  for (const name of await readdir(home)) {
    if (name.startsWith(begin)) await rm(join(home, name), { recursive: true, force: true });
  }
}
