// Prints the contract: `npm run openapi` writes it to openapi.json, which the tests compare byte for byte.
import { writeFile } from 'node:fs/promises';
import { contract } from '../src/contract.js';

const target = new URL('../openapi.json', import.meta.url);
await writeFile(target, await contract());
