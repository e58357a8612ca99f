import { dirname, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder of package.json: the commands work from any working directory. */
export const projectRoot = resolve(dirname(fileURLToPath(import.meta.url)), '../..');

export const inProject = (path) => resolve(projectRoot, path);
