import { readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { commandLine, isAlive, processesIn, sendSignal, waitUntil } from './processes.js';

/**
 * Stops a server that outlived its service. Called under the service's lock only, so that nobody's
 * database is stopped under a living service.
 */
export async function stopOrphan(cluster: string, log: (line: string) => void): Promise<void> {
  const note = join(cluster, 'postmaster.pid');
  const pid = Number((await readFile(note, 'utf8').catch(() => '')).split('\n')[0]);
  const alive = Number.isInteger(pid) && pid > 0 && isAlive(pid);
  // The number may have gone to another process since, perhaps to another cluster's server.
  const ours = alive && commandLine(pid)?.includes(`-D ${cluster} `) === true;
  if (ours) {
    log(`Stopping a database server left over from an earlier run (process ${pid})…`);
    await stopProcess(pid, 10_000);
  }
  await clearStragglers(cluster);
  // Left by a power cut, a killed container, or a server that nobody has collected yet: the new server would take
  // whoever bears that number for its predecessor and refuse to start. Only where it can be seen that none is left.
  if (process.platform === 'linux' && processesIn(cluster).length === 0) await rm(note, { force: true });
}

/**
 * Fast shutdown (SIGINT: open transactions are rolled back), then an immediate one (SIGQUIT: recovery at
 * the next start), and at last none at all.
 */
export async function stopProcess(pid: number, patienceMs: number): Promise<void> {
  const gone = (): boolean => !isAlive(pid);
  sendSignal(pid, 'SIGINT');
  if (await waitUntil(gone, patienceMs)) return;
  sendSignal(pid, 'SIGQUIT');
  if (await waitUntil(gone, 6_000)) return;
  sendSignal(pid, 'SIGKILL');
  await waitUntil(gone, 2_000);
}

/**
 * Ends what a killed postmaster left behind. Its children notice by themselves within moments, but one in
 * a long computation does not, and a new postmaster refuses to start beside it.
 */
export async function clearStragglers(cluster: string): Promise<void> {
  const none = (): boolean => processesIn(cluster).length === 0;
  if (await waitUntil(none, 1_000)) return;
  for (const signal of ['SIGQUIT', 'SIGKILL'] as const) {
    for (const pid of processesIn(cluster)) sendSignal(pid, signal);
    if (await waitUntil(none, 2_000)) return;
  }
}
