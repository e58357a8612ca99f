import type { NestFastifyApplication } from '@nestjs/platform-fastify';
import { openDatabase } from './open-database.js';
import { type Config, readConfig } from './platform/config/config.js';
import { StartError } from './platform/config/start-error.js';
import type { EmbeddedServer } from './platform/database/embedded/index.js';

/** A request may take this long to finish after the service was told to stop. */
const LONGEST_STOP_MS = 20_000;

interface Running {
  app?: NestFastifyApplication;
  lifecycle?: { enter(phase: 'draining'): void };
  server?: EmbeddedServer | null;
}

/** Starts the service, and stops it on SIGINT, SIGTERM or SIGHUP. A reason not to start is one sentence and exit code 1. */
export async function runService(): Promise<void> {
  const running: Running = {};
  let stopping = false;
  const stop = (): void => {
    // Ctrl-C may arrive twice: from the terminal, and passed on by npm.
    if (stopping) return;
    stopping = true;
    say('Stopping: finishing the requests in flight…');
    setTimeout(() => process.exit(1), LONGEST_STOP_MS).unref();
    void stopAll(running).then(() => {
      say('Stopped.');
      process.exit();
    });
  };
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, stop);
  try {
    await start(running);
  } catch (error) {
    if (stopping) return;
    stopping = true;
    await stopAll(running);
    if (!(error instanceof StartError)) throw error;
    console.error(error.message);
    process.exit(1);
  }
}

async function start(running: Running): Promise<void> {
  const config = readConfig(process.env, process.cwd());
  const opening = openDatabase(config, say).then((database) => {
    running.server = database.server;
    return database.url;
  });
  const [ownerUrl, application] = await Promise.all([opening, import('./application.js')]);
  const { createApp, Demonstration, Lifecycle, provision, serveReference } = application;
  const provisioned = await provision(ownerUrl);
  if (provisioned.migrated.length > 0) say('Database brought up to date.');
  const app = await createApp(provisioned, config.logLevel);
  running.app = app;
  const lifecycle = app.get(Lifecycle);
  running.lifecycle = lifecycle;
  serveReference(app);
  lifecycle.enter('starting');
  // Listening comes first, so that a port in use is said before the demonstration is made.
  const address = await listen(app, config);
  const seeded = await app.get(Demonstration).seedWhenEmpty(config.demoPassword, say);
  lifecycle.enter('serving');
  say(greeting(address, config, running.server?.cluster ?? null, seeded));
}

/** The framework's own words about listening are kept out: the greeting, or the sentence of a refusal, says it better. */
async function quietly(app: NestFastifyApplication, work: () => Promise<unknown>): Promise<void> {
  const { log } = app.getHttpAdapter().getInstance();
  const { level } = log;
  log.level = 'silent';
  await work().finally(() => (log.level = level));
}

async function listen(app: NestFastifyApplication, { port, host }: Config): Promise<string> {
  try {
    await quietly(app, () => app.listen(port, host));
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    if (code === 'EADDRINUSE') throw new StartError(`Port ${port} of ${host} is in use by another program. Stop that program, or choose another port: PORT=3001 npm start`);
    if (code === 'EACCES') throw new StartError(`Port ${port} may not be opened by this user. Choose one above 1023: PORT=3000 npm start`);
    throw new StartError(`The service can not listen on ${host}, port ${port} (${message}). Check HOST and PORT.`);
  }
  const url = new URL(await app.getUrl());
  if (url.hostname === '[::1]' || host === '127.0.0.1') url.hostname = '127.0.0.1';
  return url.origin;
}

function greeting(address: string, config: Config, cluster: string | null, seeded: { email: string; role: string; password: string }[] | null): string {
  const lines = ['', `Rillbook answers at ${address}`, `  API reference   ${address}/docs`, `  Database        ${cluster === null ? 'the server of DATABASE_URL' : `embedded PostgreSQL, in ${cluster}`}`];
  if (seeded !== null) {
    lines.push('', 'Demonstration company, made just now. Sign in with:');
    for (const { email, role } of seeded) lines.push(`  ${email.padEnd(36)} ${role}`);
    const password = seeded[0]?.password ?? '';
    lines.push(`  password: ${password}${config.demoPassword === null ? '   (shown only this once; choose your own with RILLBOOK_DEMO_PASSWORD on an empty database)' : '   (from RILLBOOK_DEMO_PASSWORD)'}`);
  } else if (config.demoPassword !== null) {
    lines.push('', 'The company that is there keeps its passwords; RILLBOOK_DEMO_PASSWORD counts in an empty database only.');
  }
  lines.push('', 'Stop with Ctrl-C.', '');
  return lines.join('\n');
}

async function stopAll(running: Running): Promise<void> {
  running.lifecycle?.enter('draining');
  await running.app?.close().catch((error: unknown) => console.error(error));
  await running.server?.stop().catch((error: unknown) => console.error(error));
}

function say(line: string): void {
  console.log(line);
}
