// The yardstick: node:http and pg, the same statements on connections of the same login, and nothing else.
import http from 'node:http';
import type { AddressInfo } from 'node:net';
import pg from 'pg';
import type { World } from './world.js';

const { serviceUrl, world } = JSON.parse(process.env['BENCH_INPUT'] ?? '{}') as { serviceUrl: string; world: World };

const pool = new pg.Pool({ connectionString: serviceUrl, max: 20 });
pool.on('connect', (client) => {
  void client.query("SELECT set_config('rillbook.company', $1, false)", [world.companyId]);
});

const server = http.createServer((request, response) => {
  void answer(request.url ?? '').then((body) => {
    response.writeHead(body === null ? 404 : 200, { 'content-type': 'application/json; charset=utf-8' });
    response.end(body ?? '{}');
  });
});

async function answer(path: string): Promise<string | null> {
  const route = world.routes.find((one) => one.path === path);
  if (route === undefined) return null;
  const client = await pool.connect();
  try {
    const results: unknown[] = [];
    for (const { text, values } of route.statements) results.push((await client.query(text, [...values])).rows);
    return JSON.stringify({ items: results });
  } finally {
    client.release();
  }
}

server.listen(0, '127.0.0.1', () => process.send?.({ url: `http://127.0.0.1:${(server.address() as AddressInfo).port}` }));
process.on('disconnect', () => process.exit());
