import pg from 'pg';
import { type Measurement, median } from '../measure.js';
import { withDatabase } from '../service.js';
import { makeWorkWeeksWorld, type WorkWeeksWorld } from './world.js';

const MOST_MS = 300;
const ROUNDS = 7;
const WARM_UP = 3;

interface Case {
  readonly name: string;
  readonly path: string;
  /** Picks the hours that the answer depends on. */
  readonly rows: string;
  readonly values: readonly unknown[];
  readonly isTarget: boolean;
}

/** Work weeks and the labor of jobs under yearly caps, each beside bare reading of the hours that it depends on. */
export function benchWorkWeeks(): Promise<Measurement[]> {
  return withDatabase(async ({ database, ownerUrl, startService }) => {
    const world = await makeWorkWeeksWorld(database, ownerUrl);
    const { url } = await startService();
    const bare = new pg.Client({ connectionString: database.serviceUrl });
    await bare.connect();
    await bare.query("SELECT set_config('rillbook.company', $1, false)", [world.companyId]);
    const results: Measurement[] = [];
    for (const one of cases(world)) results.push(await measure(one, world, url, bare));
    await bare.end();
    return results;
  });
}

function cases({ ofASeason, ofTheYear, entries }: WorkWeeksWorld): Case[] {
  const ofItsPeople = 'person_id IN (SELECT person_id FROM time_entry WHERE job_id = $1)';
  const all = entries.toLocaleString('en-US');
  return [
    { name: `last week of a year of ${all} hours, 40 people`, path: '/v1/work-weeks?of=2026-12-16&limit=50', rows: 'true', values: [], isTarget: true },
    { name: 'profitability of a job of two months and five people', path: `/v1/jobs/${ofASeason}/profitability`, rows: ofItsPeople, values: [ofASeason], isTarget: true },
    { name: `profitability of a job on all days of the year, ${all} hours, 40 people`, path: `/v1/jobs/${ofTheYear}/profitability`, rows: ofItsPeople, values: [ofTheYear], isTarget: false },
  ];
}

async function measure({ name, path: route, rows, values, isTarget }: Case, { token }: WorkWeeksWorld, url: string, bare: pg.Client): Promise<Measurement> {
  const [mine, other]: [number[], number[]] = [[], []];
  for (let round = -WARM_UP; round < ROUNDS; round++) {
    const own = await timed(async () => {
      const answer = await fetch(url + route, { headers: { authorization: `Bearer ${token}` } });
      if (answer.status !== 200) throw new Error(`${route}: ${await answer.text()}`);
      await answer.arrayBuffer();
    });
    const read = await timed(() => bare.query(`SELECT id, job_id, person_id, cost_code, started_at, ended_at, breaks, unpaid_break_minutes, hourly_wage, burden_percent FROM time_entry WHERE ${rows}`, [...values]));
    if (round < 0) continue;
    mine.push(own);
    other.push(read);
  }
  const [ours, yardstick] = [median(mine), median(other)];
  return { name: `${name}; yardstick: reading the hours bare`, ours, yardstick, ratio: ours / yardstick, unit: 'ms', target: isTarget ? `under ${MOST_MS} ms` : 'none', met: !isTarget || ours < MOST_MS };
}

async function timed(work: () => Promise<unknown>): Promise<number> {
  const start = performance.now();
  await work();
  return performance.now() - start;
}
