import { accessSync, constants, mkdirSync, readFileSync } from 'node:fs';
import { homedir, tmpdir } from 'node:os';
import { join } from 'node:path';
import { inProject } from './project.mjs';
import { step } from './run.mjs';

/**
 * Whether node_modules holds what package-lock.json asks for. npm keeps its own account of the folder in
 * node_modules/.package-lock.json and writes it last, so an interrupted installation doesn't count.
 */
export function dependenciesAreReady() {
  const wanted = packagesOf('package-lock.json');
  const found = packagesOf('node_modules/.package-lock.json');
  if (wanted === undefined || found === undefined) return false;
  return Object.entries(wanted).every(([path, entry]) => {
    if (path === '') return true;
    const there = found[path];
    // Optional packages are those of other systems; they are rightly missing.
    if (there === undefined) return entry.optional === true;
    return there.version === entry.version && there.integrity === entry.integrity;
  });
}

function packagesOf(file) {
  try {
    return JSON.parse(readFileSync(inProject(file), 'utf8')).packages;
  } catch {
    return undefined;
  }
}

/** Installs exactly what package-lock.json says. */
export async function installDependencies() {
  // The build needs the development packages, whatever NODE_ENV says.
  const args = ['ci', '--no-audit', '--no-fund', '--include=dev', '--include=optional', ...cacheArguments()];
  const [program, first] = npm();
  await step('Installing the packages that Rillbook needs (once; about a minute)…', program, [...first, ...args]);
}

/** The npm that started us, or the one on the path. */
function npm() {
  const path = process.env.npm_execpath;
  return path !== undefined && path.endsWith('npm-cli.js') ? [process.execPath, [path]] : ['npm', []];
}

/** A service account often has a home folder that isn't there: npm's cache then goes to a temporary one. */
function cacheArguments() {
  try {
    const cache = process.env.npm_config_cache || join(homedir(), '.npm');
    mkdirSync(cache, { recursive: true });
    accessSync(cache, constants.W_OK);
    return [];
  } catch {
    return ['--cache', join(tmpdir(), `rillbook-npm-cache-${process.getuid?.() ?? ''}`)];
  }
}
