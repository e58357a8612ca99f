import { spawn } from 'node:child_process';
import { once } from 'node:events';
import path from 'node:path';
import { startTestApp, type TestApp } from '../support/test-app.js';
import { signIn } from '../support/test-company.js';

const ROOT = path.resolve(import.meta.dirname, '../..');
const PASSWORD = 'a fine sentence about newts';
const GOOD = ['--name', 'Our Ponds', '--currency', 'USD', '--time-zone', 'America/Detroit', '--owner', 'Ada Quill', '--email', 'ada@our-ponds.example'];
const PATIENCE = 120_000;

describe('npm run new-company', () => {
  let test: TestApp;

  beforeAll(async () => {
    test = await startTestApp();
  });
  afterAll(() => test.close());

  async function run(options: string[], password: string): Promise<{ code: number | null; output: string }> {
    const env: NodeJS.ProcessEnv = { ...process.env, DATABASE_URL: test.database.ownerUrl };
    for (const name of Object.keys(env)) if (/^(RILLBOOK_TEST_|npm_|JEST_)/.test(name)) delete env[name];
    const child = spawn(process.execPath, ['scripts/new-company.mjs', ...options], { cwd: ROOT, env, stdio: 'pipe' });
    let output = '';
    for (const stream of [child.stdout, child.stderr]) stream.on('data', (chunk: Buffer) => (output += chunk.toString()));
    child.stdin.end(`${password}\n`);
    const [code] = (await once(child, 'close')) as [number | null];
    return { code, output };
  }

  it('makes a company whose owner can sign in and set it up', async () => {
    const { code, output } = await run(GOOD, PASSWORD);
    expect([code, output]).toEqual([0, expect.stringContaining('ada@our-ponds.example can sign in')]);
    const owner = await signIn(test, 'ada@our-ponds.example', PASSWORD);
    expect((await owner.patch('/v1/company', { laborSellRate: '70.00' })).body).toMatchObject({ name: 'Our Ponds', laborSellRate: '70.00' });
  }, PATIENCE);

  it('refuses what is wrong in a sentence, and leaves nothing behind', async () => {
    const before = await test.sql('SELECT count(*) FROM company');
    for (const [options, password, sentence] of [
      [GOOD.with(3, 'USX'), PASSWORD, /currency/],
      [GOOD, 'too short', /at least 15 characters/],
      [['--nme', 'x'], PASSWORD, /Unknown option '--nme'/],
      [GOOD.slice(0, 6), PASSWORD, /--owner must/],
    ] as [string[], string, RegExp][]) {
      const { code, output } = await run(options, password);
      expect([options, code, output]).toEqual([options, 1, expect.stringMatching(sentence)]);
      expect(output).not.toMatch(/\n\s+at /);
    }
    expect(await test.sql('SELECT count(*) FROM company')).toEqual(before);
  }, PATIENCE);
});
