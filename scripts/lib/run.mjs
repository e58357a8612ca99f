import { spawn } from 'node:child_process';
import { constants } from 'node:os';
import { projectRoot } from './project.mjs';

const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'];

/**
 * Runs a program in the project's folder and passes signals on to it, since a supervisor signals one
 * process only and would leave the program behind.
 * @returns {Promise<{code: number, output: string, interrupted: boolean}>} code as a shell gives it
 */
export function run(program, args, { quiet = false, env = process.env } = {}) {
  return new Promise((done, failed) => {
    const stdio = quiet ? ['ignore', 'pipe', 'pipe'] : 'inherit';
    const child = spawn(program, args, { cwd: projectRoot, env, stdio });
    let output = '';
    let interrupted = false;
    const passOn = (signal) => {
      interrupted = true;
      child.kill(signal);
    };
    for (const signal of signals) process.on(signal, passOn);
    for (const stream of [child.stdout, child.stderr]) stream?.setEncoding('utf8').on('data', (text) => (output += text));
    child.once('error', failed);
    child.once('close', (code, signal) => {
      for (const each of signals) process.off(each, passOn);
      done({ code: code ?? 128 + constants.signals[signal], output, interrupted });
    });
  });
}

/** Runs a step of the preparation; shows its output only when it fails, and ends the command then. */
export async function step(announcement, program, args, env) {
  console.log(announcement);
  const { code, output, interrupted } = await run(program, args, { quiet: true, env });
  if (interrupted) process.exit(code === 0 ? 130 : code);
  if (code === 0) return;
  console.error(output.trimEnd());
  console.error(`This failed: ${announcement} (exit code ${code})`);
  process.exit(1);
}
