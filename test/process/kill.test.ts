import { v7 as uuidv7 } from 'uuid';
import { newDataFolder, postmasterPid, removeDataFolders } from '../support/embedded-folders.js';
import { type ServiceProcess, signInTo, startService } from '../support/service-process.js';

const PASSWORD = 'seven herons on a mossy ledge';
const WRITERS = 6;
const PATIENCE = 240_000;
const QUOTE_LINES = ['10.00', '20.00', '30.00'].map((amount) => ({ description: 'Skip hire', quantity: '1', unitPrice: { amount, currency: 'USD' }, unitCost: { amount: '5.00', currency: 'USD' }, costCode: 'hauling' }));

let folder: string;
let service: ServiceProcess;
let owner: string;

/** What the writers of one test were told was done. */
type Acknowledged = Map<string, string>;

/** All that any writer ever asked for. */
const asked = new Set<string>();

beforeAll(async () => {
  folder = await newDataFolder();
  service = await startService({ RILLBOOK_DATA: folder, RILLBOOK_DEMO_PASSWORD: PASSWORD, RILLBOOK_LOG_LEVEL: 'error' });
  owner = /(\S+@\S+)\s+owner\n/.exec(service.output())?.[1] ?? '';
}, PATIENCE);
afterAll(async () => {
  await service.end('SIGKILL');
  await removeDataFolders();
});

/** Enters customers, and quotes of three lines, until told to stop; failures are expected while the service is away. */
function writers(url: string, token: string): { written: Acknowledged; stop: () => Promise<void> } {
  const written: Acknowledged = new Map();
  let on = true;
  const headers = { authorization: `Bearer ${token}`, 'content-type': 'application/json' };
  const write = async (_: unknown, writer: number): Promise<void> => {
    while (on) {
      const id = uuidv7();
      asked.add(id);
      const [path, body] = writer % 2 === 0 ? ['/v1/customers', { id, name: `Written ${id}` }] : ['/v1/quotes', { id, title: `Written ${id}`, other: QUOTE_LINES }];
      const made = await fetch(url + path, { method: 'POST', headers, body: JSON.stringify(body) }).catch(() => null);
      if (made?.status === 201) written.set(id, path);
      else await soon(20);
      if (made !== null && ![201, 503].includes(made.status)) throw new Error(`an answer ${made.status}: ${service.output()}`);
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

/** All that is there and was written here: its id, and how many lines it has when it is a quote. */
async function everything(url: string, token: string): Promise<Map<string, number | null>> {
  const headers = { authorization: `Bearer ${token}` };
  const read = async <T>(path: string): Promise<T> => (await (await fetch(url + path, { headers })).json()) as T;
  const found = new Map<string, number | null>();
  for (const list of ['/v1/customers', '/v1/quotes']) {
    for (let cursor: string | null = ''; cursor !== null; ) {
      const page: { items: { id: string; name?: string; title?: string }[]; nextCursor: string | null } = await read(`${list}?limit=200${cursor === '' ? '' : `&cursor=${cursor}`}`);
      for (const { id, name, title } of page.items) {
        if (!(name ?? title ?? '').startsWith('Written')) continue;
        found.set(id, title === undefined ? null : (await read<{ lines: unknown[] }>(`/v1/quotes/${id}`)).lines.length);
      }
      cursor = page.nextCursor;
    }
  }
  return found;
}

/** Every acknowledged write is there, nothing is there that nobody asked for, and no quote without all of its lines. */
async function verify(written: Acknowledged): Promise<void> {
  const token = await signInTo(service.url, owner, PASSWORD);
  const found = await everything(service.url, token);
  expect([...written.values()].filter((path) => path === '/v1/quotes').length).toBeGreaterThan(3);
  expect([...written.keys()].filter((id) => !found.has(id))).toEqual([]);
  expect([...found.keys()].filter((id) => !asked.has(id))).toEqual([]);
  expect([...found.values()].filter((lines) => lines !== null && lines !== QUOTE_LINES.length)).toEqual([]);
}

const soon = (milliseconds: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, milliseconds));

describe('kill -9 in the middle of writes', () => {
  it('of the service loses nothing that was acknowledged', async () => {
    const { written, stop } = writers(service.url, await signInTo(service.url, owner, PASSWORD));
    await soon(1_500);
    await service.end('SIGKILL');
    await stop();
    service = await startService({ RILLBOOK_DATA: folder, RILLBOOK_LOG_LEVEL: 'error' });
    await verify(written);
  }, PATIENCE);

  it('of the database loses nothing, and the service goes on by itself', async () => {
    const { written, stop } = writers(service.url, await signInTo(service.url, owner, PASSWORD));
    await soon(1_000);
    const before = written.size;
    process.kill(await postmasterPid(folder), 'SIGKILL');
    const deadline = Date.now() + 60_000;
    await soon(1_000);
    const afterKill = written.size;
    while (written.size <= afterKill + 10 && Date.now() < deadline) await soon(200);
    await stop();
    expect(written.size).toBeGreaterThan(before + 10);
    // A log is read by more people than a customer's record, and kept elsewhere.
    expect(service.output()).toContain('request failed');
    expect(service.output()).not.toContain('Written ');
    await verify(written);
  }, PATIENCE);

  it('of both at once loses nothing', async () => {
    const { written, stop } = writers(service.url, await signInTo(service.url, owner, PASSWORD));
    await soon(1_500);
    const database = await postmasterPid(folder);
    process.kill(database, 'SIGKILL');
    await service.end('SIGKILL');
    await stop();
    service = await startService({ RILLBOOK_DATA: folder, RILLBOOK_LOG_LEVEL: 'error' });
    await verify(written);
  }, PATIENCE);
});
