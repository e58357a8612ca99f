export { startEmbeddedServer } from './start-embedded-server.js';
export type { EmbeddedServer, EmbeddedServerOptions } from './start-embedded-server.js';
