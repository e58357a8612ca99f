import { spawn } from 'node:child_process';
import { constants } from 'node:os';
import { projectRoot } from './project.mjs';

const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'];

/**
 * Runs a program in the project's folder and passes signals on to it, since a supervisor signals one
 * process only and would leave the program behind.
 * @returns {Promise<{code: number, output: string, interrupted: boolean}>} the code as a shell gives it
 */
export function run(program, args, { quiet = false } = {}) {
  return new Promise((done) => {
    const stdio = quiet ? ['ignore', 'pipe', 'pipe'] : 'inherit';
    const child = spawn(program, args, { cwd: projectRoot, stdio });
    let output = '';
    let interrupted = false;
    const passOn = (signal) => {
      interrupted = true;
      child.kill(signal);
      // npm goes on with its installation for half a minute. What it leaves half done is done anew.
      if (quiet) setTimeout(() => child.kill('SIGKILL'), 1_000).unref();
    };
    for (const signal of signals) process.on(signal, passOn);
    for (const stream of [child.stdout, child.stderr]) stream?.setEncoding('utf8').on('data', (text) => (output += text));
    // Not there at all: as a shell says it.
    child.once('error', (error) => done({ code: 127, output: error.message, interrupted }));
    child.once('close', (code, signal) => {
      for (const each of signals) process.off(each, passOn);
      done({ code: code ?? 128 + constants.signals[signal], output, interrupted });
    });
  });
}

/** Runs a step of the preparation; shows its output only when it fails, and ends the command then. */
export async function step(announcement, program, args) {
  console.log(announcement);
  const { code, output, interrupted } = await run(program, args, { quiet: true });
  if (interrupted) process.exit(130);
  if (code === 0) return;
  console.error(output.trimEnd());
  console.error(`This failed: ${announcement} (exit code ${code})`);
  process.exit(1);
}
