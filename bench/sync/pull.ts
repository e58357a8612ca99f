import { v7 as uuidv7 } from 'uuid';
import { type Measurement, median } from '../measure.js';
import { call, hours, type SyncWorld } from './world.js';

const MOST_MS = 50;
/** The larger journal may cost this much more: the noise of a run. */
const FLAT = 1.5;
const ROUNDS = 9;
const WARM_UP = 3;
const ROWS_A_TRANSACTION = 10_000;
/** What a company of twenty jobs logs in a day, and what of it this phone keeps. */
const [OF_MINE, OF_OTHERS] = [60, 180];

/** One phone pulls the changes of a day, with a short and a long journal behind them. */
export async function benchPull(world: SyncWorld, url: string): Promise<Measurement[]> {
  const results: { rows: number; ms: number }[] = [];
  for (const rows of [10_000, 1_000_000]) {
    await fillJournal(world, rows);
    const cursor = await pullAll(world, url, null);
    await aDay(world, url);
    const times: number[] = [];
    for (let round = -WARM_UP; round < ROUNDS; round++) {
      const start = performance.now();
      await pullAll(world, url, cursor.cursor, OF_MINE);
      if (round >= 0) times.push(performance.now() - start);
    }
    results.push({ rows, ms: median(times) });
  }
  const [short, long] = results;
  if (short === undefined || long === undefined) return [];
  const name = (rows: number): string => `pull of a day's changes, ${OF_MINE} of ${OF_MINE + OF_OTHERS} hours this phone's, ${rows.toLocaleString('en-US')} rows in the journal`;
  const ratio = long.ms / short.ms;
  return [
    { name: name(short.rows), ours: short.ms, yardstick: null, ratio: null, unit: 'ms', target: `under ${MOST_MS} ms`, met: short.ms < MOST_MS },
    { name: name(long.rows), ours: long.ms, yardstick: short.ms, ratio, unit: 'ms', target: `under ${MOST_MS} ms, and at most ${FLAT} times the short journal's`, met: long.ms < MOST_MS && ratio <= FLAT },
  ];
}

async function pullAll(world: SyncWorld, url: string, from: string | null, atLeast = 0): Promise<{ cursor: string }> {
  let cursor = from;
  let count = 0;
  for (let more = true; more; ) {
    const page = (await call(url, world.token, `/v1/sync/pull?limit=500${cursor === null ? '' : `&cursor=${cursor}`}`)) as { items: unknown[]; cursor: string; more: boolean };
    ({ cursor, more } = page);
    count += page.items.length;
  }
  if (count < atLeast) throw new Error(`the pull gave ${count} rows, not ${atLeast}`);
  return { cursor: cursor ?? '' };
}

async function aDay(world: SyncWorld, url: string): Promise<void> {
  const now = new Date().toISOString();
  const bodies = [...hours(world, world.mine, OF_MINE), ...hours(world, world.others, OF_OTHERS)];
  await call(url, world.token, '/v1/sync/push', { clientId: uuidv7(), sentAt: now, mutations: bodies.map((body, i) => ({ id: uuidv7(), counter: i, kind: 'time-entry.log', recordedAt: now, body })) });
}

/** Changes of hours long past, in transactions of some size, until the journal has so many rows. */
async function fillJournal(world: SyncWorld, rows: number): Promise<void> {
  const [there] = await world.sql('SELECT count(*)::int AS n FROM history WHERE company_id = $1', [world.companyId]);
  for (let missing = rows - Number(there?.['n']); missing > 0; missing -= ROWS_A_TRANSACTION) {
    await world.sql(
      `INSERT INTO history (company_id, actor_id, entity, entity_id, operation, columns, before)
       SELECT $1, $2, 'time_entry', uuidv7(), 'update', '{note}', '{"note": "Softer than probed near the inlet"}' FROM generate_series(1, $3)`,
      [world.companyId, world.personId, Math.min(missing, ROWS_A_TRANSACTION)],
    );
  }
  await world.sql('VACUUM ANALYZE history');
}
