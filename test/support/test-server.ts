import { chmod, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { startEmbeddedServer, type EmbeddedServer } from '../../src/platform/database/embedded/index.js';
import { prepareTemplate } from './template.js';
import { templateName } from './template-name.js';
import { folderPrefix, sweepAbandoned } from './abandoned-folders.js';

let running: { server: EmbeddedServer; folder: string } | undefined;

/**
 * One server for the whole run, or the one that RILLBOOK_TEST_SERVER_URL names, which is left running.
 * The address, an owner's, is in that variable afterwards.
 */
export async function startTestServer(): Promise<void> {
  let url = process.env['RILLBOOK_TEST_SERVER_URL'];
  if (url === undefined || url === '') {
    await sweepAbandoned();
    const folder = await mkdtemp(join(tmpdir(), folderPrefix));
    // As root the server runs as another user, who must get in.
    await chmod(folder, 0o711);
    const server = await startEmbeddedServer({ dataDir: folder, log: () => undefined, durable: false });
    running = { server, folder };
    stopOnSignals();
    url = server.url;
    process.env['RILLBOOK_TEST_SERVER_URL'] = url;
  }
  await prepareTemplate(await makeTemplate(url));
}

export async function stopTestServer(): Promise<void> {
  const { server, folder } = running ?? {};
  running = undefined;
  await server?.stop();
  if (folder !== undefined) await rm(folder, { recursive: true, force: true });
}

async function makeTemplate(url: string): Promise<string> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    await client.query(`DROP DATABASE IF EXISTS ${templateName} WITH (FORCE)`);
    await client.query(`CREATE DATABASE ${templateName}`);
  } finally {
    await client.end();
  }
  const template = new URL(url);
  template.pathname = `/${templateName}`;
  return template.toString();
}

/**
 * Jest runs no teardown when it is interrupted. The handlers stay, since Ctrl-C arrives twice: from the
 * terminal, and passed on by npm.
 */
function stopOnSignals(): void {
  const codes = { SIGHUP: 129, SIGINT: 130, SIGTERM: 143 } as const;
  for (const [signal, code] of Object.entries(codes)) {
    process.on(signal, () => {
      void stopTestServer().finally(() => process.exit(code));
    });
  }
}
