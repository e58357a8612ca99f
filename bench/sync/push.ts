import pg from 'pg';
import { v7 as uuidv7 } from 'uuid';
import { type Measurement, median } from '../measure.js';
import { call, hours, type SyncWorld } from './world.js';

const ENTRIES = 500;
const ROUNDS = 7;
const WARM_UP = 4;
const MOST_MS = 400;
const LEAST_RATIO = 1 / 3;

/** A push of 500 hours in one request, beside a bare loop of as many single-row inserts into the same table. */
export async function benchPush(world: SyncWorld, url: string, serviceUrl: string): Promise<{ push: Measurement; ratio: Measurement }> {
  const bare = new pg.Client({ connectionString: serviceUrl });
  await bare.connect();
  await bare.query("SELECT set_config('rillbook.company', $1, false)", [world.companyId]);
  const [ours, loop]: [number[], number[]] = [[], []];
  for (let round = -WARM_UP; round < ROUNDS; round++) {
    const pushed = await pushOnce(world, url);
    const inserted = await insertOneByOne(world, bare);
    if (round < 0) continue;
    ours.push(pushed);
    loop.push(inserted);
  }
  await bare.end();
  const [own, yardstick] = [median(ours), median(loop)];
  const ratio = yardstick / own;
  return {
    push: { name: `push of ${ENTRIES} hours, from the request to its answer`, ours: own, yardstick: null, ratio: null, unit: 'ms', target: `under ${MOST_MS} ms`, met: own < MOST_MS },
    ratio: { name: 'hours pushed, beside single-row inserts over pg', ours: (ENTRIES / own) * 1000, yardstick: (ENTRIES / yardstick) * 1000, ratio, unit: 'entries/s', target: 'ratio at least 0.33', met: ratio >= LEAST_RATIO },
  };
}

async function pushOnce(world: SyncWorld, url: string): Promise<number> {
  const now = new Date().toISOString();
  const mutations = hours(world, world.mine, ENTRIES).map((body, i) => ({ id: uuidv7(), counter: i, kind: 'time-entry.log', recordedAt: now, body }));
  const start = performance.now();
  const { items } = (await call(url, world.token, '/v1/sync/push', { clientId: uuidv7(), sentAt: now, mutations })) as { items: { outcome: string; problem?: unknown }[] };
  const took = performance.now() - start;
  const other = items.find(({ outcome }) => outcome !== 'applied');
  if (other !== undefined) throw new Error(`an hour was not applied: ${JSON.stringify(other)}`);
  return took;
}

async function insertOneByOne(world: SyncWorld, bare: pg.Client): Promise<number> {
  const rows = hours(world, world.mine, ENTRIES);
  const start = performance.now();
  for (const row of rows) {
    await bare.query(
      `INSERT INTO time_entry (company_id, id, job_id, person_id, cost_code, started_at, ended_at, recorded_by, hourly_wage, burden_percent) VALUES ($1, $2, $3, $4, $5, $6, $7, $4, 32, 22.5)`,
      [world.companyId, row['id'], row['jobId'], row['personId'], row['costCode'], row['startedAt'], row['endedAt']],
    );
  }
  return performance.now() - start;
}
