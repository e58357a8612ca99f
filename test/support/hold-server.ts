// A process that holds an embedded server until it is told to stop, for the tests that kill it.
import { startEmbeddedServer } from '../../src/platform/database/embedded/index.js';

const server = await startEmbeddedServer({ dataDir: process.argv[2] ?? '', log: () => undefined });
process.once('SIGTERM', () => void server.stop());
console.log(server.url);
