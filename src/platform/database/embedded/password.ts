import { randomBytes } from 'node:crypto';
import { readFile, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { StartError } from '../../config/start-error.js';
import { failureReason } from './failure-reason.js';

const fileIn = (dataDir: string): string => join(dataDir, 'postgres.json');

/** Makes the password of the cluster's owner; the server listens on the machine, where others may knock. */
export async function makePassword(dataDir: string): Promise<string> {
  const password = randomBytes(24).toString('base64url');
  const path = fileIn(dataDir);
  try {
    await writeFile(`${path}.new`, `${JSON.stringify({ password })}\n`, { mode: 0o600 });
    await rename(`${path}.new`, path);
  } catch (error) {
    throw new StartError(`The database password can't be kept in ${path}: ${failureReason(error)}.`);
  }
  return password;
}

/** @throws StartError when the file of an existing cluster is missing or damaged */
export async function readPassword(dataDir: string): Promise<string> {
  const path = fileIn(dataDir);
  try {
    const value: unknown = JSON.parse(await readFile(path, 'utf8'));
    if (typeof value === 'object' && value !== null && 'password' in value && typeof value.password === 'string') {
      return value.password;
    }
  } catch (error) {
    throw lost(path, failureReason(error));
  }
  throw lost(path, 'it holds no password');
}

function lost(path: string, why: string): StartError {
  return new StartError(
    `The password of the database in this data folder can't be read from ${path}: ${why}. ` +
      'Bring the file back from a backup, or start as the user that made the folder.',
  );
}
