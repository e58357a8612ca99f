// `npm test`: the whole suite, or with `npm test -- test/e2e/quotes.test.ts` what Jest is told.
import { requireNode } from './lib/node-version.mjs';
import { prepareDependencies } from './lib/prepare.mjs';
import { inProject } from './lib/project.mjs';
import { run } from './lib/run.mjs';

requireNode();
await prepareDependencies();
const flags = ['--experimental-vm-modules', '--disable-warning=ExperimentalWarning'];
const jest = inProject('node_modules/jest/bin/jest.js');
const { code } = await run(process.execPath, [...flags, jest, ...process.argv.slice(2)]);
process.exit(code);
