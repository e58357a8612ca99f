import pg from 'pg';
import { createApp } from '../../src/create-app.js';
import type { Provisioned } from '../../src/platform/database/provision.js';
import { acceptSimpleWork } from '../../test/support/accepted-work.js';
import { appClient } from '../../test/support/test-app.js';
import { makeTestCompany } from '../../test/support/test-company.js';

export interface WorkWeeksWorld {
  readonly companyId: string;
  readonly token: string;
  /** On which five people worked for two months. */
  readonly ofASeason: string;
  /** On which all people worked all year. */
  readonly ofTheYear: string;
  readonly entries: number;
}

const PEOPLE = 40;
const CREW = 5;
const SEASONS = 6;

/**
 * A year of forty people: four entries on each working day, three of them on the job of their crew, one on a job of
 * everybody's; taxes and insurance with yearly caps.
 */
export async function makeWorkWeeksWorld(database: Provisioned, ownerUrl: string): Promise<WorkWeeksWorld> {
  const app = await createApp(database, 'silent');
  await app.listen(0, '127.0.0.1');
  const company = await makeTestCompany(appClient(app, (await app.getUrl()).replace('[::1]', '127.0.0.1')));
  const { owner } = company;
  const people: string[] = [];
  for (let i = 0; i < PEOPLE; i++) {
    const { body } = await owner.post('/v1/people', { name: `Person ${i}`, email: `bench-${i}@fernhollow.example`, role: 'crew', hourlyWage: String(22 + i / 4), burdenPercent: '20' }).expect(201);
    people.push(body.id as string);
  }
  const rates = [['retirement', '6.2', '184500'], ['health', '1.45', null], ['unemployment', '0.6', '7000'], ['state', '2.7', '9000'], ['insurance', '6.5', null]];
  for (const [code, percent, yearlyWageCap] of rates) await owner.post('/v1/burden-rates', { code, name: code, percent, yearlyWageCap, base: 'all-pay', effectiveFrom: '2026-01-01' }).expect(201);
  const jobs: string[] = [];
  for (let i = 0; i <= (PEOPLE / CREW) * SEASONS; i++) jobs.push((await acceptSimpleWork(company, '900.00')).jobId);
  await app.close();
  const [ofTheYear = '', ...ofCrews] = jobs;
  const sql = new pg.Client({ connectionString: ownerUrl });
  await sql.connect();
  const { rowCount } = await sql.query(
    `INSERT INTO time_entry (company_id, id, job_id, person_id, cost_code, started_at, ended_at, recorded_by, hourly_wage, burden_percent)
     SELECT $1, uuidv7(), CASE WHEN part = 3 THEN $3::uuid ELSE ($4::uuid[])[1 + ((p - 1) / $5) * $6 + least($6 - 1, (extract(month FROM day)::int - 1) / 2)] END, person, 'cleanout',
       day + make_interval(hours => 12 + part * 2), day + make_interval(hours => 13 + part * 2, mins => 40 + 7 * part), $7, 22 + p / 4.0, 20
     FROM unnest($2::uuid[]) WITH ORDINALITY AS people (person, p), generate_series('2026-01-05'::timestamptz, '2026-12-28', '1 day') AS day, generate_series(0, 3) AS part
     WHERE extract(isodow FROM day) < 6`,
    [company.id, people, ofTheYear, ofCrews, CREW, SEASONS, owner.personId],
  );
  await sql.query('ANALYZE');
  await sql.end();
  return { companyId: company.id, token: owner.token, ofASeason: ofCrews[SEASONS - 1] ?? '', ofTheYear, entries: rowCount ?? 0 };
}
