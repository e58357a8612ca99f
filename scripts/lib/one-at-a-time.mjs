import { readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { setTimeout as delay } from 'node:timers/promises';
import { inProject } from './project.mjs';

const lock = inProject('.preparing.lock');

/** `npm start` and `npm test` begun side by side in a fresh clone must not install into one folder at once. */
export async function oneAtATime(work) {
  let told = false;
  while (!take()) {
    if (!told) console.log(`Another command is preparing this folder; waiting for it… (If there is none, remove ${lock}.)`);
    told = true;
    await delay(300);
  }
  const release = () => rmSync(lock, { force: true });
  process.once('exit', release);
  await work();
  process.off('exit', release);
  release();
}

function take() {
  try {
    writeFileSync(lock, String(process.pid), { flag: 'wx' });
    return true;
  } catch (error) {
    // In a folder that may not be written the preparation itself will say so.
    if (error.code !== 'EEXIST') return true;
    if (!holderLives()) rmSync(lock, { force: true });
    return false;
  }
}

function holderLives() {
  try {
    const pid = Number(readFileSync(lock, 'utf8'));
    // An empty file is being written this moment, unless its writer was killed over it.
    if (pid === 0) return Date.now() - statSync(lock).mtimeMs < 5_000;
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error.code === 'EPERM';
  }
}
