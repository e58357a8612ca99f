// `npm start`: prepares what is missing, then runs the service in this very process, so that a signal to
// it reaches the service without a messenger.
import { requireNode } from './lib/node-version.mjs';
import { prepareBuild, prepareDependencies } from './lib/prepare.mjs';
import { stopWithNpm } from './lib/stop-with-npm.mjs';

requireNode();
stopWithNpm();
await prepareDependencies();
await prepareBuild();
await import('../dist/main.js');
