import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import path from 'node:path';

const ROOT = path.resolve(import.meta.dirname, '../..');

export interface ServiceProcess {
  readonly child: ChildProcess;
  readonly url: string;
  /** All that it printed so far. */
  output(): string;
  /** Sends a signal and waits for the end. @returns the exit code, or null when the signal ended it */
  end(signal: NodeJS.Signals): Promise<number | null>;
}

export interface Ended {
  readonly code: number | null;
  readonly output: string;
}

/**
 * The service as `npm start` runs it, in a process group of its own, on a free port.
 * @returns the running service, or how it ended when it did not start
 */
export async function runService(settings: Record<string, string>): Promise<ServiceProcess | Ended> {
  const env: NodeJS.ProcessEnv = { ...process.env, PORT: '0', RILLBOOK_LOG_LEVEL: 'silent', ...settings };
  // The tests' own settings must not reach the service, nor npm's: it would take this process for npm.
  for (const name of Object.keys(env)) if (/^(RILLBOOK_TEST_|npm_|JEST_)/.test(name)) delete env[name];
  const child = spawn(process.execPath, ['scripts/start.mjs'], { cwd: ROOT, env, detached: true, stdio: ['ignore', 'pipe', 'pipe'] });
  let text = '';
  const collect = (chunk: Buffer): void => void (text += chunk.toString());
  child.stdout.on('data', collect);
  child.stderr.on('data', collect);
  const ended = once(child, 'close').then(([code]) => code as number | null);
  const url = await new Promise<string | null>((resolve) => {
    child.stdout.on('data', () => {
      const found = /answers at (http:\S+)/.exec(text)?.[1];
      if (found !== undefined && text.includes('Stop with Ctrl-C')) resolve(found);
    });
    void ended.then(() => resolve(null));
  });
  if (url === null) return { code: await ended, output: text };
  return {
    child,
    url,
    output: () => text,
    end: async (signal) => {
      child.kill(signal);
      return ended;
    },
  };
}

export async function startService(settings: Record<string, string>): Promise<ServiceProcess> {
  const service = await runService(settings);
  if (!('url' in service)) throw new Error(`The service did not start (${service.code}): ${service.output}`);
  return service;
}

export async function failToStart(settings: Record<string, string>): Promise<Ended> {
  const service = await runService(settings);
  if ('url' in service) {
    await service.end('SIGKILL');
    throw new Error('The service started.');
  }
  return service;
}

export async function signInTo(url: string, email: string, password: string): Promise<string> {
  const answer = await fetch(`${url}/v1/sessions`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify({ email, password }) });
  if (answer.status !== 201) throw new Error(`sign-in: ${await answer.text()}`);
  return ((await answer.json()) as { accessToken: string }).accessToken;
}
