import { spawnSync } from 'node:child_process';
import { readFileSync, statSync } from 'node:fs';
import { StartError } from '../../config/start-error.js';

/** The unprivileged user that the server runs as; PostgreSQL refuses to run as root. */
export interface Identity {
  readonly uid: number;
  readonly gid: number;
}

/** The environment of every server process: PG* and LC_* variables of the caller must not steer it. */
export const plainEnvironment = { PATH: '/usr/local/bin:/usr/bin:/bin', TZ: 'UTC' } as const;

/**
 * Who runs the server: nobody else (`undefined`) for an ordinary user; for root the owner of the
 * existing cluster, else the user `postgres`, else `nobody`. No user is created: a changed list of
 * users would surprise, and the tools for it are missing on small systems.
 */
export function chooseIdentity(existingCluster: string | undefined): Identity | undefined {
  if (process.getuid?.() !== 0) return undefined;
  if (existingCluster !== undefined) {
    const { uid, gid } = statSync(existingCluster);
    if (uid !== 0) return { uid, gid };
  }
  const identity = lookUp('postgres') ?? lookUp('nobody');
  if (identity !== undefined) return identity;
  throw new StartError(
    'PostgreSQL refuses to run as root, and this system has neither a user "postgres" nor "nobody" to run it as. ' +
      'Start Rillbook as an ordinary user, or set DATABASE_URL to a server of your own.',
  );
}

function lookUp(name: string): Identity | undefined {
  const line = usersFile()
    .split('\n')
    .find((entry) => entry.startsWith(`${name}:`));
  const [, , uid, gid] = (line ?? '').split(':').map(Number);
  return uid !== undefined && gid !== undefined && uid > 0 && gid >= 0 ? { uid, gid } : undefined;
}

function usersFile(): string {
  try {
    return readFileSync('/etc/passwd', 'utf8');
  } catch {
    // The smallest container images have none.
    return '';
  }
}

/** Whether that user may pass through every folder down to this one. Asked, not computed: ACLs count too. */
export function mayEnter(folder: string, identity: Identity | undefined): boolean {
  const ask = spawnSync('/bin/sh', ['-c', 'cd "$1"', 'sh', folder], {
    ...identity,
    cwd: '/',
    env: plainEnvironment,
    stdio: 'ignore',
  });
  return ask.status === 0;
}
