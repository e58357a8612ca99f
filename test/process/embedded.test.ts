import { existsSync } from 'node:fs';
import { appendFile, chmod, mkdir, readFile, readdir, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { StartError } from '../../src/platform/config/start-error.js';
import { startEmbeddedServer, type EmbeddedServer } from '../../src/platform/database/embedded/index.js';
import { isAlive, processesIn } from '../../src/platform/database/embedded/processes.js';
import { ask, clusterOf, newDataFolder, postmasterPid, removeDataFolders } from '../support/embedded-folders.js';

const asRoot = process.getuid?.() === 0;
const running: EmbeddedServer[] = [];
const lines: string[] = [];

async function start(dataDir: string): Promise<EmbeddedServer> {
  const server = await startEmbeddedServer({ dataDir, log: (line) => lines.push(line), durable: false });
  running.push(server);
  return server;
}

async function failureOf(dataDir: string): Promise<StartError> {
  const outcome: unknown = await start(dataDir).catch((error: unknown) => error);
  expect(outcome).toBeInstanceOf(StartError);
  return outcome as StartError;
}

// One cluster for all: making one takes most of a second, coming back to it a tenth.
let folder: string;

beforeAll(async () => {
  folder = await newDataFolder();
});

afterEach(async () => {
  for (const server of running.splice(0)) await server.stop();
});

afterAll(removeDataFolders);

describe('the embedded server', () => {
  it('keeps what was committed, and leaves neither a process nor a lock when it is stopped', async () => {
    const first = await start(folder);
    await ask(first.url, 'CREATE TABLE kept AS SELECT 42 AS answer');
    const pid = await postmasterPid(folder);
    expect(existsSync(join(folder, 'service.lock'))).toBe(true);
    await first.stop();
    expect(isAlive(pid)).toBe(false);
    expect(processesIn(await clusterOf(folder))).toEqual([]);
    expect(existsSync(join(folder, 'service.lock'))).toBe(false);
    const second = await start(folder);
    expect(await ask(second.url, 'SELECT answer FROM kept')).toEqual([42]);
  });

  it('makes the database anew after a first start that was cut off', async () => {
    const fresh = await newDataFolder();
    const left = join(fresh, 'postgres.unfinished-1');
    await mkdir(left);
    await writeFile(join(left, 'PG_VERSION'), '18\n');
    expect(await ask((await start(fresh)).url, 'SELECT 1')).toEqual([1]);
    expect((await readdir(fresh)).sort()).toEqual(['postgres', 'postgres.json', 'postgres.log', 'service.lock']);
  });

  it('runs the settings that the service relies on', async () => {
    const { url } = await start(folder);
    const settings = ['timezone', 'server_encoding', 'data_checksums', 'listen_addresses', 'max_connections'];
    const shown = await ask(url, `SELECT ${settings.map((name) => `current_setting('${name}')`).join()}`);
    expect(shown).toEqual(['UTC', 'UTF8', 'on', '127.0.0.1', '50']);
    await ask(url, 'CREATE EXTENSION pg_trgm');
    expect(await ask(url, "SELECT upper('ä'), 'Z' < 'a', show_trgm('ä') <> '{}'")).toEqual(['Ä', true, true]);
  });

  it('lets nobody in without its password, which only its owner may read', async () => {
    const stranger = new URL((await start(folder)).url);
    stranger.password = 'guess';
    await expect(ask(stranger.toString(), 'SELECT 1')).rejects.toMatchObject({ code: '28P01' });
    expect((await stat(join(folder, 'postgres.json'))).mode & 0o777).toBe(0o600);
  });

  it('refuses a folder in use by a living service, and names its process', async () => {
    const { url } = await start(folder);
    expect((await failureOf(folder)).message).toContain(`in use by process ${process.pid}`);
    expect(await ask(url, 'SELECT 1')).toEqual([1]);
  });

  it('says so when a file is in the place of its folder', async () => {
    const path = join(folder, 'in-the-way');
    await writeFile(path, '');
    expect((await failureOf(path)).message).toMatch(/can't be made: a file of that name is in its place/);
    expect((await failureOf(join(path, 'deeper'))).message).toMatch(/can't be made: a part of the path is a file/);
  });

  it('says so when its folder may not be written', async () => {
    if (asRoot) {
      // Root may write anywhere but where nobody can: the system's own folder takes none.
      expect((await failureOf('/sys/rillbook')).message).toMatch(
        /^The data folder \/sys\/rillbook can't be made: (the file system is|the operation is|permission is)/,
      );
    } else {
      const forbidden = await newDataFolder();
      await chmod(forbidden, 0o555);
      expect((await failureOf(forbidden)).message).toMatch(/can't write to its data folder .*: permission is denied/);
    }
  });

  it('keeps the cluster where its user may go when the data folder is closed to it', async () => {
    const closed = await newDataFolder('closed');
    const first = await start(closed);
    await ask(first.url, 'CREATE TABLE kept AS SELECT 7 AS answer');
    const cluster = await clusterOf(closed);
    if (asRoot) expect(cluster).toMatch(/^\/var\/lib\/rillbook\/data-[0-9a-f]{16}\/postgres$/);
    else expect(cluster).toBe(join(closed, 'postgres'));
    await first.stop();
    expect(await ask((await start(closed)).url, 'SELECT answer FROM kept')).toEqual([7]);
  });

  it('refuses a cluster of another PostgreSQL version in a sentence', async () => {
    await (await start(folder)).stop();
    const version = join(await clusterOf(folder), 'PG_VERSION');
    await writeFile(version, '17\n');
    expect((await failureOf(folder)).message).toMatch(/was made by PostgreSQL 17; this Rillbook brings PostgreSQL 18/);
    await writeFile(version, '18\n');
  });

  it('quotes the server when it does not start, and gives the folder free', async () => {
    await (await start(folder)).stop();
    const settings = join(await clusterOf(folder), 'postgresql.conf');
    const sound = await readFile(settings, 'utf8');
    await appendFile(settings, "\nno_such_setting = 'x'\n");
    expect((await failureOf(folder)).message).toMatch(/ended with exit code 1.*no_such_setting/s);
    await writeFile(settings, sound);
    expect(await ask((await start(folder)).url, 'SELECT 1')).toEqual([1]);
  });

  it('says what is lost when the password file is gone', async () => {
    await (await start(folder)).stop();
    const file = join(folder, 'postgres.json');
    const sound = await readFile(file, 'utf8');
    await writeFile(file, '{}');
    expect((await failureOf(folder)).message).toMatch(/password .* can't be read from .*postgres\.json: it holds no/);
    await writeFile(file, sound);
  });
});
