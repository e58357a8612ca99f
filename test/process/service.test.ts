import { writeFile } from 'node:fs/promises';
import net from 'node:net';
import path from 'node:path';
import { isAlive, processesIn } from '../../src/platform/database/embedded/processes.js';
import { clusterOf, newDataFolder, postmasterPid, removeDataFolders } from '../support/embedded-folders.js';
import { failToStart, type ServiceProcess, signInTo, startService } from '../support/service-process.js';
import { makeTestDatabase } from '../support/test-database.js';

const PASSWORD = 'seven herons on a mossy ledge';
// The build and a first database take their time on a busy machine.
const PATIENCE = 240_000;

let folder: string;
const running: ServiceProcess[] = [];

const start = async (settings: Record<string, string> = {}): Promise<ServiceProcess> => {
  const service = await startService({ RILLBOOK_DATA: folder, RILLBOOK_DEMO_PASSWORD: PASSWORD, ...settings });
  running.push(service);
  return service;
};

/** The e-mail address that the greeting names for a role. */
const addressOf = (service: ServiceProcess, role: string): string => new RegExp(`(\\S+@\\S+)\\s+${role}\\n`).exec(service.output())?.[1] ?? '';

beforeAll(async () => {
  folder = await newDataFolder();
});
afterEach(async () => {
  for (const service of running.splice(0)) if (service.child.exitCode === null && service.child.signalCode === null) await service.end('SIGKILL');
});
afterAll(removeDataFolders);

describe('npm start', () => {
  it('prints the address, the sign-ins and how to stop, and ends on Ctrl-C without a process left', async () => {
    const service = await start();
    expect(service.output()).toContain(`${service.url}/docs`);
    expect(service.output()).toContain(PASSWORD);
    expect(service.output()).toContain(`in ${await clusterOf(folder)}\n`);
    const token = await signInTo(service.url, addressOf(service, 'owner'), PASSWORD);
    expect((await fetch(`${service.url}/v1/jobs`, { headers: { authorization: `Bearer ${token}` } })).status).toBe(200);
    expect((await fetch(`${service.url}/docs`)).status).toBe(200);
    const contract = (await (await fetch(`${service.url}/docs/openapi.json`)).json()) as { openapi: string };
    expect(contract.openapi).toBe('3.1.0');
    const pid = await postmasterPid(folder);
    expect(await service.end('SIGINT')).toBe(0);
    expect(isAlive(pid)).toBe(false);
    expect(processesIn(await clusterOf(folder))).toEqual([]);
  }, PATIENCE);

  it('comes back to the same data, and says that the password of the demonstration stays as it was', async () => {
    const service = await start();
    expect(service.output()).not.toContain(PASSWORD);
    expect(service.output()).toContain('keeps its passwords');
    expect(await service.end('SIGTERM')).toBe(0);
  }, PATIENCE);

  it('refuses a second service on the same data folder, and a port in use, in a sentence', async () => {
    const service = await start();
    const second = await failToStart({ RILLBOOK_DATA: folder });
    expect([second.code, second.output]).toEqual([1, expect.stringMatching(/in use/)]);
    const other = await newDataFolder();
    const port = await failToStart({ RILLBOOK_DATA: other, PORT: new URL(service.url).port, RILLBOOK_LOG_LEVEL: 'info' });
    expect([port.code, port.output]).toEqual([1, expect.stringMatching(/Port \d+ of 127\.0\.0\.1 is in use/)]);
    expect(port.output).not.toMatch(/^\{/m);
    expect(processesIn(await clusterOf(other))).toEqual([]);
  }, PATIENCE);

  it('refuses settings that are no settings, and a folder that is none, each in a sentence', async () => {
    const file = path.join(await newDataFolder(), 'file');
    await writeFile(file, '');
    const cases: [Record<string, string>, RegExp][] = [
      [{ PORT: 'abc' }, /PORT is "abc"/],
      [{ PORT: '70000' }, /PORT is "70000"/],
      [{ HOST: 'no host' }, /HOST is "no host"/],
      [{ DATABASE_URL: 'mysql://x' }, /DATABASE_URL is no PostgreSQL address/],
      [{ RILLBOOK_DEMO_PASSWORD: 'short' }, /15 to 128 characters/],
      [{ RILLBOOK_DATTA: 'x' }, /RILLBOOK_DATTA is unknown/],
      [{ RILLBOOK_DATA: path.join(file, 'below') }, /data/],
      [{ DATABASE_URL: 'postgresql://u:p@127.0.0.1:1/x' }, /can't be reached/],
    ];
    for (const [settings, sentence] of cases) {
      const { code, output } = await failToStart({ RILLBOOK_DATA: path.join(file, 'unused'), ...settings });
      expect([settings, code, output]).toEqual([settings, 1, expect.stringMatching(sentence)]);
      expect(output).not.toMatch(/\n\s+at /);
    }
  }, PATIENCE);

  it('runs on the server of DATABASE_URL, and refuses a database that is ahead of it', async () => {
    const database = await makeTestDatabase();
    const service = await start({ DATABASE_URL: database.ownerUrl });
    expect((await fetch(`${service.url}/health/ready`)).status).toBe(200);
    expect(await service.end('SIGINT')).toBe(0);
    const { default: pg } = await import('pg');
    const owner = new pg.Client({ connectionString: database.ownerUrl });
    await owner.connect();
    await owner.query("INSERT INTO migration (timestamp, name) VALUES (9999, 'FromTomorrow0000000009999')");
    await owner.end();
    const { code, output } = await failToStart({ DATABASE_URL: database.ownerUrl });
    expect([code, output]).toEqual([1, expect.stringMatching(/ahead of this code.*FromTomorrow/)]);
    await database.drop();
  }, PATIENCE);

  it('logs each request with its id, and no secret', async () => {
    const service = await start({ RILLBOOK_LOG_LEVEL: 'debug' });
    const email = 'owner@wrenmarsh.example';
    const answer = await fetch(`${service.url}/v1/sessions`, { method: 'POST', headers: { 'content-type': 'application/json', 'x-request-id': 'a-request-of-mine' }, body: JSON.stringify({ email, password: PASSWORD }) });
    const { accessToken, refreshToken } = (await answer.json()) as { accessToken: string; refreshToken: string };
    expect(answer.headers.get('x-request-id')).toBe('a-request-of-mine');
    await fetch(`${service.url}/v1/customers`, { headers: { authorization: `Bearer ${accessToken}` } });
    await fetch(`${service.url}/v1/sessions/refresh`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify({ refreshToken }) });
    await service.end('SIGINT');
    const lines = service.output().split('\n').filter((line) => line.startsWith('{')).map((line) => JSON.parse(line) as Record<string, unknown>);
    expect(lines).toContainEqual(expect.objectContaining({ requestId: 'a-request-of-mine', method: 'POST', path: '/v1/sessions', status: 201 }));
    expect(lines).toContainEqual(expect.objectContaining({ path: '/v1/customers', status: 200, requestId: expect.stringMatching(/^[0-9a-f-]{36}$/) as string }));
    for (const secret of [PASSWORD, accessToken, refreshToken, '$argon2id$']) expect(service.output()).not.toContain(secret);
  }, PATIENCE);

  it('finishes the requests in flight when it is told to stop', async () => {
    const service = await start();
    const { port } = new URL(service.url);
    // A request whose body is still on its way when the signal comes.
    const socket = net.connect(Number(port), '127.0.0.1');
    const body = JSON.stringify({ email: 'nobody@example.com', password: 'no such password at all' });
    socket.write(`POST /v1/sessions HTTP/1.1\r\nhost: x\r\ncontent-type: application/json\r\ncontent-length: ${body.length}\r\n\r\n${body.slice(0, 10)}`);
    await new Promise((resolve) => setTimeout(resolve, 300));
    const ended = service.end('SIGINT');
    await new Promise((resolve) => setTimeout(resolve, 300));
    let answer = '';
    socket.on('data', (chunk) => (answer += chunk.toString()));
    const closed = new Promise((resolve) => socket.on('close', resolve));
    socket.write(body.slice(10));
    await closed;
    expect(answer).toMatch(/^HTTP\/1\.1 401/);
    expect(answer.toLowerCase()).toContain('connection: close');
    expect(await ended).toBe(0);
  }, PATIENCE);
});
