// `npm run bench`: the service is measured as it is in production, so it is built first.
import { prepareBuild, prepareDependencies } from './lib/prepare.mjs';
import { inProject } from './lib/project.mjs';
import { run } from './lib/run.mjs';

await prepareDependencies();
await prepareBuild();
const { code } = await run(process.execPath, ['--import', inProject('scripts/lib/typescript.mjs'), inProject('bench/index.ts'), ...process.argv.slice(2)]);
process.exit(code);
