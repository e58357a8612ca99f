// `npm run simulate -- --phones 200 --mutations 50000 --kills 20 --seed N`: crews' phones against the service as it is in production.
import { prepareBuild, prepareDependencies } from './lib/prepare.mjs';
import { inProject } from './lib/project.mjs';
import { run } from './lib/run.mjs';

await prepareDependencies();
await prepareBuild();
const { code } = await run(process.execPath, ['--import', inProject('scripts/lib/typescript.mjs'), inProject('test/sync/simulation/command.ts'), ...process.argv.slice(2)]);
process.exit(code);
