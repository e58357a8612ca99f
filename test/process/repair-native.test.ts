import { chmod, mkdir, mkdtemp, readFile, readlink, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { StartError } from '../../src/platform/config/start-error.js';
import { repairNative } from '../../src/platform/database/embedded/repair-native.js';

let native: string;

/** A package as npm unpacks it when it may run no install scripts. */
beforeEach(async () => {
  native = join(await mkdtemp(join(tmpdir(), 'rillbook-native-')), 'native');
  for (const folder of ['bin', 'lib']) await mkdir(join(native, folder), { recursive: true });
  for (const file of ['bin/initdb', 'bin/postgres', 'lib/libpq.so.5.18']) await writeFile(join(native, file), file);
  for (const file of ['bin/initdb', 'bin/postgres']) await chmod(join(native, file), 0o644);
  const links = [{ source: 'native/lib/libpq.so.5.18', target: 'native/lib/libpq.so.5' }];
  await writeFile(join(native, 'pg-symlinks.json'), JSON.stringify(links));
});

afterEach(() => rm(join(native, '..'), { recursive: true }));

it('makes the links and the execute bits that a skipped install script left out', async () => {
  await repairNative(native);
  expect(await readlink(join(native, 'lib/libpq.so.5'))).toBe('libpq.so.5.18');
  expect(await readFile(join(native, 'lib/libpq.so.5'), 'utf8')).toBe('lib/libpq.so.5.18');
  expect((await stat(join(native, 'bin/postgres'))).mode & 0o777).toBe(0o755);
  expect((await stat(join(native, 'bin/initdb'))).mode & 0o777).toBe(0o755);
});

it('leaves a whole package as it is', async () => {
  await repairNative(native);
  const before = await stat(join(native, 'bin/postgres'));
  await repairNative(native);
  expect((await stat(join(native, 'bin/postgres'))).ctimeMs).toBe(before.ctimeMs);
});

it('says what to do about a package without its server', async () => {
  await rm(join(native, 'bin/postgres'));
  const failure: unknown = await repairNative(native).catch((error: unknown) => error);
  expect(failure).toBeInstanceOf(StartError);
  expect((failure as StartError).message).toMatch(/can't be repaired: it does not exist\. Run "npm ci"/);
});
