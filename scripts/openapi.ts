// `npm run openapi` writes the contract to openapi.json; with --check it compares, and exits with 1 when they differ.
import { readFile, writeFile } from 'node:fs/promises';
import { contract } from '../src/contract.js';

const target = new URL('../openapi.json', import.meta.url);
const text = await contract();
if (!process.argv.includes('--check')) {
  await writeFile(target, text);
} else if ((await readFile(target, 'utf8').catch(() => '')) !== text) {
  console.error('openapi.json is not what the code makes. Run npm run openapi, look at the difference, and commit it.');
  process.exit(1);
}
