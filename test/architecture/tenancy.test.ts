import pg from 'pg';
import { makeTestDatabase, type TestDatabase } from '../support/test-database.js';

/** Tables that belong to no company: the service's own. */
const OWN_TABLES = ['migration', 'service_secret'];

/** Tables whose changes the journal does not follow, each with the reason. */
const OUT_OF_JOURNAL: Record<string, string> = {
  history: 'is the journal',
  sync_mutation: 'is a record of its own: the service may add to it and neither change nor delete',
  upload_piece: 'carries bytes until the upload is whole; what becomes of them, the journal tells of the upload',
  refresh_token: 'is replaced every ten minutes; that a session began and how it ended, the journal tells of the session',
};

/** Columns whose changes it does not follow, each with the reason; the version of a row never is one that is. */
const OUT_OF_JOURNAL_COLUMNS: Record<string, string> = {
  'device.last_seen_at': 'is written once a minute for each phone and changes nothing that anybody keeps',
};

describe('tenant tables', () => {
  let database: TestDatabase;
  let owner: pg.Client;
  let tables: { name: string; oid: number; forced: boolean; secured: boolean; owner: string }[];

  const query = async <T extends object>(text: string, values: unknown[] = []): Promise<T[]> => (await owner.query<T>(text, values)).rows;

  beforeAll(async () => {
    database = await makeTestDatabase();
    owner = new pg.Client({ connectionString: database.ownerUrl });
    await owner.connect();
    tables = (
      await query<(typeof tables)[number]>(
        `SELECT c.relname AS name, c.oid::int AS oid, c.relrowsecurity AS secured, c.relforcerowsecurity AS forced, pg_get_userbyid(c.relowner) AS owner
         FROM pg_class c WHERE c.relnamespace = 'public'::regnamespace AND c.relkind IN ('r', 'p') ORDER BY 1`,
      )
    ).filter((table) => !OWN_TABLES.includes(table.name));
  });
  afterAll(async () => {
    await owner.end();
    await database.drop();
  });

  it('are all known to this test', () => {
    expect(tables.length).toBeGreaterThan(20);
  });

  it('have forced row-level security with a policy on company_id for reading and writing', async () => {
    expect(tables.filter((table) => !table.secured || !table.forced).map((table) => table.name)).toEqual([]);
    const policies = await query<{ tablename: string }>("SELECT tablename FROM pg_policies WHERE policyname = 'company_only' AND cmd = 'ALL' AND qual LIKE '%company_id = ( SELECT current_company()%' AND with_check IS NULL");
    expect(policies.map((row) => row.tablename).sort()).toEqual(tables.map((table) => table.name));
  });

  it('begin every primary and unique key with company_id', async () => {
    const rows = await query<{ key: string }>(
      `SELECT i.indexrelid::regclass::text AS key FROM pg_index i
       JOIN pg_class c ON c.oid = i.indrelid
       LEFT JOIN pg_attribute a ON a.attrelid = i.indrelid AND a.attnum = i.indkey[0]
       WHERE (i.indisunique OR i.indisexclusion) AND c.oid = ANY ($1::oid[]) AND a.attname IS DISTINCT FROM 'company_id'`,
      [tables.map((table) => table.oid)],
    );
    expect(rows.map((row) => row.key)).toEqual([]);
  });

  it('carry company_id in every reference to another tenant table', async () => {
    const rows = await query<{ conname: string }>(
      `SELECT conname FROM pg_constraint WHERE contype = 'f' AND conrelid = ANY ($1::oid[])
       AND NOT EXISTS (
         SELECT FROM unnest(conkey, confkey) AS pair(mine, theirs)
         JOIN pg_attribute m ON m.attrelid = conrelid AND m.attnum = mine JOIN pg_attribute t ON t.attrelid = confrelid AND t.attnum = theirs
         WHERE m.attname = 'company_id' AND t.attname = 'company_id')`,
      [tables.map((table) => table.oid)],
    );
    expect(rows.map((row) => row.conname)).toEqual([]);
  });

  it('have the journal trigger on insert, update and delete, except those that are named here with a reason', async () => {
    const rows = await query<{ relname: string }>(
      `SELECT c.relname FROM pg_trigger t JOIN pg_class c ON c.oid = t.tgrelid JOIN pg_proc p ON p.oid = t.tgfoid
       WHERE p.proname = 'write_history' AND NOT t.tgisinternal AND t.tgtype & 28 = 28 AND t.tgtype & 1 = 1 AND t.tgenabled = 'O' ORDER BY 1`,
    );
    expect(rows.map((row) => row.relname)).toEqual(tables.map((table) => table.name).filter((name) => !(name in OUT_OF_JOURNAL)));
  });

  it('have no column that the journal leaves out, except those that are named here with a reason', async () => {
    const rows = await query<{ name: string }>(
      `SELECT t.tgrelid::regclass::text || '.' || substr(argument, 2) AS name
       FROM pg_trigger t CROSS JOIN LATERAL unnest(string_to_array(encode(t.tgargs, 'escape'), '\\000')) AS argument WHERE t.tgname = 'journal' AND argument LIKE '-%'`,
    );
    expect(rows.map((row) => row.name).sort()).toEqual(Object.keys(OUT_OF_JOURNAL_COLUMNS));
  });

  it('keep what was secret from the journal when a column is left out of it', async () => {
    const [trigger] = await query<{ arguments: string }>("SELECT encode(tgargs, 'escape') AS arguments FROM pg_trigger WHERE tgname = 'journal' AND tgrelid = 'device'::regclass");
    expect(trigger?.arguments.split('\\000').sort()).toEqual(['', '-last_seen_at', 'create_digest', 'secret_hash']);
  });

  it('let the service add to what is a record of its own, and neither change nor delete there', async () => {
    const rows = await query<{ name: string }>(
      "SELECT privilege_type AS name FROM information_schema.role_table_grants WHERE table_name = 'sync_mutation' AND grantee = 'rillbook_service' ORDER BY 1",
    );
    expect(rows.map((row) => row.name)).toEqual(['INSERT', 'SELECT']);
  });

  it('name every constraint and index after its table', async () => {
    const rows = await query<{ name: string }>(
      `SELECT conname AS name FROM pg_constraint WHERE conrelid = ANY ($1::oid[]) AND contype IN ('p', 'u', 'f', 'c', 'x') AND conname !~ '^(pk|uq|fk|ck|ex)_[a-z0-9_]+$'
       UNION ALL SELECT indexrelid::regclass::text FROM pg_index WHERE indrelid = ANY ($1::oid[]) AND indexrelid::regclass::text !~ '^(pk|uq|ix|ex)_[a-z0-9_]+$'`,
      [tables.map((table) => table.oid)],
    );
    expect(rows.map((row) => row.name)).toEqual([]);
  });

  it('index every reference that a list or a check follows', async () => {
    const rows = await query<{ conname: string }>(
      `SELECT conname FROM pg_constraint f WHERE contype = 'f' AND conrelid = ANY ($1::oid[]) AND cardinality(conkey) = 2 AND conname !~ '_(document|rule_id|part_id|survey_id|quote_id|customer_id|site_id|feature_id)$'
       AND NOT EXISTS (SELECT FROM pg_index i WHERE i.indrelid = f.conrelid AND (i.indkey::int2[])[0:1] @> f.conkey)`,
      [tables.map((table) => table.oid)],
    );
    expect(rows.map((row) => row.conname)).toEqual([]);
  });

  it('belong to the owner, not to the login of the service, which bypasses nothing', async () => {
    const service = new URL(database.serviceUrl).username;
    expect(tables.filter((table) => table.owner === service)).toEqual([]);
    const [role] = await query<{ rolsuper: boolean; rolbypassrls: boolean; rolcreaterole: boolean; rolcreatedb: boolean }>('SELECT rolsuper, rolbypassrls, rolcreaterole, rolcreatedb FROM pg_roles WHERE rolname = $1', [service]);
    expect(role).toEqual({ rolsuper: false, rolbypassrls: false, rolcreaterole: false, rolcreatedb: false });
  });

  it('show nothing to the service without a company, nor its secrets, and take no change to the journal', async () => {
    const client = new pg.Client({ connectionString: database.serviceUrl });
    await client.connect();
    try {
      await owner.query("INSERT INTO company (company_id, name, currency, time_zone, locale, unit_system, paper_size, labor_sell_rate, hour_increment) VALUES (uuidv7(), 'Somebody', 'USD', 'UTC', 'en-US', 'us', 'letter', 1, 1)");
      for (const { name } of tables) {
        const { rows } = await client.query<{ n: string }>(`SELECT count(*) AS n FROM ${name}`);
        expect([name, rows[0]?.n]).toEqual([name, '0']);
      }
      for (const sql of ['SELECT * FROM service_secret', 'DELETE FROM history', 'UPDATE history SET entity = entity', 'TRUNCATE customer', 'ALTER TABLE customer DISABLE ROW LEVEL SECURITY', 'DROP TABLE customer']) {
        await expect(client.query(sql)).rejects.toMatchObject({ code: '42501' });
      }
      await client.query("SELECT set_config('rillbook.company', '0199c3a2-5b1e-7c44-9d0a-3f6b1c2d4e5f', false)");
      await expect(client.query("INSERT INTO customer (company_id, id, name) VALUES (uuidv7(), uuidv7(), 'For another company')")).rejects.toMatchObject({ code: '42501' });
    } finally {
      await client.end();
    }
  });
});
