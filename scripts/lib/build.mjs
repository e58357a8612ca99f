import { createHash } from 'node:crypto';
import { existsSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { inProject } from './project.mjs';
import { step } from './run.mjs';

const stamp = 'dist/.build-stamp';
// The lock file stands for the compiler's version. Migrations are read as they are, not built.
const settings = ['nest-cli.json', 'tsconfig.json', 'tsconfig.build.json', 'package-lock.json'];

/** Whether dist was built from these very sources. By content: a checkout changes dates, not text. */
export function buildIsReady() {
  if (!existsSync(inProject('dist/main.js'))) return false;
  try {
    return readFileSync(inProject(stamp), 'utf8') === fingerprint();
  } catch {
    return false;
  }
}

export async function build() {
  // Taken before the build: what is edited meanwhile must count as changed.
  const sources = fingerprint();
  const compiler = inProject('node_modules/@nestjs/cli/bin/nest.js');
  await step('Building…', process.execPath, [compiler, 'build']);
  writeFileSync(inProject(stamp), sources);
}

function fingerprint() {
  const hash = createHash('sha256');
  for (const file of [...settings, ...filesUnder('src')]) {
    hash.update(`${file}\0`).update(readFileSync(inProject(file))).update('\0');
  }
  return hash.digest('hex');
}

function filesUnder(folder) {
  return readdirSync(inProject(folder), { withFileTypes: true })
    .flatMap((entry) => {
      const path = `${folder}/${entry.name}`;
      return entry.isDirectory() ? filesUnder(path) : [path];
    })
    .sort();
}
