import { v7 as uuidv7 } from 'uuid';
import { newDataFolder, postmasterPid, removeDataFolders } from '../support/embedded-folders.js';
import { type ServiceProcess, signInTo, startService } from '../support/service-process.js';

const PASSWORD = 'seven herons on a mossy ledge';
const WRITERS = 6;
const PATIENCE = 240_000;

let folder: string;
let service: ServiceProcess;
let owner: string;

/** What the writers were told was done, and what they asked for. */
interface Written {
  readonly acknowledged: Map<string, string>;
  readonly asked: Set<string>;
}

beforeAll(async () => {
  folder = await newDataFolder();
  service = await startService({ RILLBOOK_DATA: folder, RILLBOOK_DEMO_PASSWORD: PASSWORD });
  owner = /(\S+@\S+)\s+owner\n/.exec(service.output())?.[1] ?? '';
}, PATIENCE);
afterAll(async () => {
  await service.end('SIGKILL');
  await removeDataFolders();
});

/** Enters customers, and changes each once, until told to stop; failures are expected while the service is away. */
function writers(url: string, token: string): { written: Written; stop: () => Promise<void> } {
  const written: Written = { acknowledged: new Map(), asked: new Set() };
  let on = true;
  const headers = { authorization: `Bearer ${token}`, 'content-type': 'application/json' };
  const write = async (): Promise<void> => {
    while (on) {
      const id = uuidv7();
      const name = `Written ${id}`;
      written.asked.add(id);
      const made = await fetch(`${url}/v1/customers`, { method: 'POST', headers, body: JSON.stringify({ id, name }) }).catch(() => null);
      if (made?.status === 201) written.acknowledged.set(id, name);
      else await new Promise((resolve) => setTimeout(resolve, 20));
      if (made !== null && made.status >= 500 && made.status !== 503) throw new Error(`an answer ${made.status}`);
    }
  };
  const all = Array.from({ length: WRITERS }, write);
  return {
    written,
    stop: async () => {
      on = false;
      await Promise.all(all);
    },
  };
}

async function everyCustomer(url: string, token: string): Promise<Map<string, string>> {
  const found = new Map<string, string>();
  let cursor: string | null = '';
  while (cursor !== null) {
    const page = (await (await fetch(`${url}/v1/customers?limit=200${cursor === '' ? '' : `&cursor=${cursor}`}`, { headers: { authorization: `Bearer ${token}` } })).json()) as { items: { id: string; name: string }[]; nextCursor: string | null };
    for (const { id, name } of page.items) found.set(id, name);
    cursor = page.nextCursor;
  }
  return found;
}

/** Every acknowledged write is there as it was acknowledged, and nothing is there that nobody asked for. */
async function verify(written: Written): Promise<void> {
  const token = await signInTo(service.url, owner, PASSWORD);
  const found = await everyCustomer(service.url, token);
  expect(written.acknowledged.size).toBeGreaterThan(10);
  expect([...written.acknowledged].filter(([id, name]) => found.get(id) !== name)).toEqual([]);
  expect([...found].filter(([id, name]) => name.startsWith('Written') && !written.asked.has(id))).toEqual([]);
}

const soon = (milliseconds: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, milliseconds));

describe('kill -9 in the middle of writes', () => {
  it('of the service loses nothing that was acknowledged', async () => {
    const { written, stop } = writers(service.url, await signInTo(service.url, owner, PASSWORD));
    await soon(1_500);
    await service.end('SIGKILL');
    await stop();
    service = await startService({ RILLBOOK_DATA: folder });
    await verify(written);
  }, PATIENCE);

  it('of the database loses nothing, and the service goes on by itself', async () => {
    const { written, stop } = writers(service.url, await signInTo(service.url, owner, PASSWORD));
    await soon(1_000);
    const before = written.acknowledged.size;
    process.kill(await postmasterPid(folder), 'SIGKILL');
    const deadline = Date.now() + 60_000;
    await soon(1_000);
    const afterKill = written.acknowledged.size;
    while (written.acknowledged.size <= afterKill + 10 && Date.now() < deadline) await soon(200);
    await stop();
    expect(written.acknowledged.size).toBeGreaterThan(before + 10);
    await verify(written);
  }, PATIENCE);

  it('of both at once loses nothing', async () => {
    const { written, stop } = writers(service.url, await signInTo(service.url, owner, PASSWORD));
    await soon(1_500);
    const database = await postmasterPid(folder);
    process.kill(database, 'SIGKILL');
    await service.end('SIGKILL');
    await stop();
    service = await startService({ RILLBOOK_DATA: folder });
    await verify(written);
  }, PATIENCE);
});
