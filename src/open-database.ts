import type { Config } from './platform/config/config.js';
import { type EmbeddedServer, startEmbeddedServer } from './platform/database/embedded/index.js';

export interface OpenDatabase {
  /** The owner's address. */
  readonly url: string;
  /** The embedded server, where there is one: it stops with this process. */
  readonly server: EmbeddedServer | null;
}

/** The database of the settings; without one in them, that of a server of our own, once it answers. */
export async function openDatabase(config: Config, say: (line: string) => void): Promise<OpenDatabase> {
  if (config.databaseUrl !== null) return { url: config.databaseUrl, server: null };
  const server = await startEmbeddedServer({ dataDir: config.dataDir, log: say });
  return { url: server.url, server };
}
