// The yardstick: node:http and pg, the same statements on connections of the same login, and nothing else.
import http from 'node:http';
import pg from 'pg';

const { serviceUrl, world } = JSON.parse(process.env.BENCH_INPUT);
const routes = new Map(world.routes.map((route) => [route.path, route.statements]));

const pool = new pg.Pool({ connectionString: serviceUrl, max: 20 });
// When the bench ends, the server closes the connections first, idle or in use.
pool.on('error', () => undefined);
pool.on('connect', (client) => {
  client.on('error', () => undefined);
  void client.query("SELECT set_config('rillbook.company', $1, false)", [world.companyId]);
});

const server = http.createServer(async (request, response) => {
  const client = await pool.connect();
  const results = [];
  for (const { text, values } of routes.get(request.url)) results.push((await client.query(text, values)).rows);
  client.release();
  response.writeHead(200, { 'content-type': 'application/json; charset=utf-8' });
  response.end(JSON.stringify({ items: results }));
});

server.listen(0, '127.0.0.1', () => process.send({ url: `http://127.0.0.1:${server.address().port}` }));
process.on('disconnect', () => process.exit());
