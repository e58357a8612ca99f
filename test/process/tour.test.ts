import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { type ServiceProcess, startService } from '../support/service-process.js';
import { makeTestDatabase, type TestDatabase } from '../support/test-database.js';

const README = path.resolve(import.meta.dirname, '../../README.md');
// The build takes its time on a busy machine.
const PATIENCE = 240_000;

interface Walked {
  readonly code: number | null;
  readonly output: string;
}

/** The commands of the tour in their order, without the start of the service. */
async function tourBlocks(): Promise<string[]> {
  const blocks = [...(await readFile(README, 'utf8')).matchAll(/^```bash\n(.*?)^```/gms)].map((match) => match[1] ?? '');
  expect(blocks[0]).toContain('npm start');
  return blocks.slice(1);
}

async function walk(commands: string, folder: string): Promise<Walked> {
  // A newcomer would notice the first command that fails; `errexit` does it for the test.
  const bash = spawn('bash', ['-o', 'errexit', '-o', 'pipefail', '-c', commands], { cwd: folder, stdio: ['ignore', 'pipe', 'pipe'] });
  let output = '';
  for (const stream of [bash.stdout, bash.stderr]) stream.on('data', (chunk: Buffer) => void (output += chunk.toString()));
  const [code] = (await once(bash, 'close')) as [number | null];
  return { code, output };
}

describe('the tour of the README', () => {
  let database: TestDatabase;
  let service: ServiceProcess;
  let folder: string;
  let walked: Walked;

  beforeAll(async () => {
    database = await makeTestDatabase();
    folder = await mkdtemp(path.join(os.tmpdir(), 'tour-'));
    service = await startService({ DATABASE_URL: database.ownerUrl, RILLBOOK_DEMO_PASSWORD: 'seven herons on a mossy ledge' });
    const commands = (await tourBlocks()).join('\n').replace('http://127.0.0.1:3000', service.url);
    walked = await walk(commands, folder);
  }, PATIENCE);
  afterAll(async () => {
    await service.end('SIGINT');
    await database.drop();
    await rm(folder, { recursive: true });
  });

  it('runs to its end on a fresh service', () => {
    expect(walked).toEqual({ code: 0, output: walked.output });
  });

  it('says what the text around it says', () => {
    for (const said of ['8.37758', 'issued', 'finished', 'part-paid, still owed 3726.99', 'applied\nduplicate\n', '480 x 320', 'true\n']) expect(walked.output).toContain(said);
  });

  it('leaves papers that are PDF', async () => {
    for (const name of ['quote.pdf', 'invoice.pdf']) expect([name, (await readFile(path.join(folder, name))).subarray(0, 5).toString()]).toEqual([name, '%PDF-']);
  });
});
