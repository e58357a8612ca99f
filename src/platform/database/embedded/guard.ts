import { spawn } from 'node:child_process';
import { plainEnvironment, type Identity } from './identity.js';

/**
 * Sees to it that the server, or its making, does not outlive the service, however that ends: a small shell waits on a
 * pipe that the system closes when this process dies, by kill -9 or out of memory too, and then asks the
 * server for a fast shutdown.
 * @returns lets the shell go, for when the server has ended by itself
 */
export function guard(pid: number, identity: Identity | undefined): () => void {
  const shell = spawn('/bin/sh', ['-c', 'read -r _ || kill -INT "$1"', 'rillbook-guard', String(pid)], {
    ...identity,
    cwd: '/',
    env: plainEnvironment,
    // In a session of its own, or Ctrl-C would take the guard first.
    detached: true,
    stdio: ['pipe', 'ignore', 'ignore'],
  });
  // Without a guard the server runs all the same; the next start stops a left-over one.
  shell.on('error', () => undefined);
  shell.stdin.on('error', () => undefined);
  shell.unref();
  return () => shell.stdin.end('released\n');
}
