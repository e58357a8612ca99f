// `npm run new-company -- --name …`: a company of your own, beside the demonstration or instead of it.
import { requireNode } from './lib/node-version.mjs';
import { prepareBuild, prepareDependencies } from './lib/prepare.mjs';

requireNode();
await prepareDependencies();
await prepareBuild();
await import('../dist/new-company.js');
