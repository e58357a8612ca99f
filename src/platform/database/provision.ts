import { randomBytes } from 'node:crypto';
import { generateKeyPair, exportPKCS8 } from 'jose';
import { DataSource, type QueryRunner } from 'typeorm';
import { StartError } from '../config/start-error.js';
import { databaseFailure } from './database-errors.js';
import { loadMigrations } from './migrations.js';

/** What the service needs after the owner's rights are given up. */
export interface Provisioned {
  /** Connection of the service's own unprivileged login. */
  readonly serviceUrl: string;
  /** PKCS #8 PEM of the Ed25519 key that signs access tokens. */
  readonly signingKey: string;
  /** Names of the migrations that were run now. */
  readonly migrated: string[];
}

// One lock for everything done at start: two services that start at once must not migrate side by side.
const START_LOCK = 0x72696c6c;

/**
 * With the owner's connection: migrates, makes the service's login and the signing key when they are missing.
 * @throws StartError when the server can't be reached, is too old, or is ahead of this code
 */
export async function provision(ownerUrl: string): Promise<Provisioned> {
  const owner = new DataSource({ type: 'postgres', url: ownerUrl, migrations: await loadMigrations(), migrationsTableName: 'migration', connectTimeoutMS: 10_000, poolSize: 2 });
  try {
    await owner.initialize();
  } catch (error) {
    throw new StartError(`The database can't be reached (${reason(error)}). Check that PostgreSQL runs and that DATABASE_URL names its host, port, user, password and database.`);
  }
  const runner = owner.createQueryRunner();
  try {
    await requireVersion(runner);
    await runner.query('SELECT pg_advisory_lock($1)', [START_LOCK]);
    const migrated = await migrate(owner, runner);
    const signingKey = await secret(runner, 'signing-key', makeSigningKey);
    const password = await secret(runner, 'service-password', () => Promise.resolve(randomBytes(24).toString('base64url')));
    return { serviceUrl: await serviceLogin(runner, ownerUrl, password), signingKey, migrated };
  } catch (error) {
    if (error instanceof StartError) throw error;
    throw new StartError(`The database could not be prepared: ${reason(error)}.`);
  } finally {
    // Closing the connection releases the lock.
    await runner.release();
    await owner.destroy();
  }
}

async function requireVersion(runner: QueryRunner): Promise<void> {
  const [row] = (await runner.query('SHOW server_version_num')) as { server_version_num: string }[];
  const major = Math.floor(Number(row?.server_version_num) / 10_000);
  if (major < 18) {
    throw new StartError(`The database server is PostgreSQL ${major}; Rillbook needs 18 or newer. Point DATABASE_URL at a newer server, or leave it out for the embedded one.`);
  }
}

async function migrate(owner: DataSource, runner: QueryRunner): Promise<string[]> {
  const [table] = (await runner.query("SELECT to_regclass('public.migration') IS NOT NULL AS there")) as { there: boolean }[];
  const known = new Set(owner.migrations.map((migration) => migration.name));
  if (table?.there) {
    const rows = (await runner.query('SELECT name FROM migration ORDER BY id')) as { name: string }[];
    const ahead = rows.map((row) => row.name).filter((name) => !known.has(name));
    if (ahead.length > 0) {
      throw new StartError(`The database is ahead of this code: it already has ${ahead.join(', ')}. Start the newer Rillbook that made it, or use another database.`);
    }
  }
  const done = await owner.runMigrations({ transaction: 'each' });
  return done.map((migration) => migration.name);
}

async function secret(runner: QueryRunner, name: string, make: () => Promise<string>): Promise<string> {
  const read = async (): Promise<string | undefined> => {
    const rows = (await runner.query('SELECT value FROM service_secret WHERE name = $1', [name])) as { value: string }[];
    return rows[0]?.value;
  };
  const there = await read();
  if (there !== undefined) return there;
  const value = await make();
  await runner.query('INSERT INTO service_secret (name, value) VALUES ($1, $2)', [name, value]);
  return value;
}

async function makeSigningKey(): Promise<string> {
  const { privateKey } = await generateKeyPair('EdDSA', { extractable: true });
  return exportPKCS8(privateKey);
}

/** The login that owns nothing. Its name holds the database's, since logins belong to the whole cluster. */
async function serviceLogin(runner: QueryRunner, ownerUrl: string, password: string): Promise<string> {
  const [row] = (await runner.query('SELECT current_database() AS name')) as { name: string }[];
  const database = row?.name ?? '';
  const login = `rillbook_service_${database}`.slice(0, 63);
  const [sql] = (await runner.query(
    `SELECT format(
       CASE WHEN EXISTS (SELECT FROM pg_roles WHERE rolname = $1) THEN 'ALTER ROLE %I LOGIN PASSWORD %L' ELSE 'CREATE ROLE %I LOGIN PASSWORD %L' END, $1::text, $2::text) AS role,
       format('GRANT rillbook_service TO %I WITH INHERIT TRUE', $1::text) AS membership,
       format('GRANT CONNECT ON DATABASE %I TO %I', current_database(), $1::text) AS connect`,
    [login, password],
  )) as { role: string; membership: string; connect: string }[];
  if (sql !== undefined) {
    await runner.query(sql.role);
    await runner.query(sql.membership);
    await runner.query(sql.connect);
  }
  const url = new URL(ownerUrl);
  url.username = encodeURIComponent(login);
  url.password = encodeURIComponent(password);
  return url.toString();
}

function reason(error: unknown): string {
  const failure = databaseFailure(error);
  const message = error instanceof AggregateError ? error.errors.map((e) => (e as Error).message).join('; ') : (error as Error).message;
  return failure === null ? message : `${message} [${failure.code}]`;
}
