import { randomBytes } from 'node:crypto';
import pg from 'pg';
import { provision, type Provisioned } from '../../src/platform/database/provision.js';
import { templateName } from './template-name.js';

export interface TestDatabase extends Provisioned {
  /** The owner's address, for looking behind the service's back. */
  readonly ownerUrl: string;
  drop(): Promise<void>;
}

/** A database of the caller's own, copied from the migrated template. */
export async function makeTestDatabase(): Promise<TestDatabase> {
  const server = process.env['RILLBOOK_TEST_SERVER_URL'];
  if (server === undefined) throw new Error('Run the tests with npm test, which starts their database server.');
  const name = `t_${randomBytes(6).toString('hex')}`;
  await onServer(server, `CREATE DATABASE ${name} TEMPLATE ${templateName}`);
  const url = new URL(server);
  url.pathname = `/${name}`;
  const ownerUrl = url.toString();
  return {
    ...(await provision(ownerUrl)),
    ownerUrl,
    drop: async () => {
      await onServer(server, `DROP DATABASE IF EXISTS ${name} WITH (FORCE)`);
      await onServer(server, `DROP ROLE IF EXISTS rillbook_service_${name}`);
    },
  };
}

/** Roles and databases are the cluster's: two workers at once may be told to try again. */
async function onServer(server: string, sql: string): Promise<void> {
  for (let attempt = 1; ; attempt++) {
    const client = new pg.Client({ connectionString: server });
    await client.connect();
    try {
      await client.query(sql);
      return;
    } catch (error) {
      if (attempt >= 20) throw error;
      await new Promise((resolve) => setTimeout(resolve, 50 * attempt));
    } finally {
      await client.end();
    }
  }
}
