// The service as it is in production: the built code, in a process of its own.
import { createApp } from '../dist/create-app.js';

const { database } = JSON.parse(process.env.BENCH_INPUT);
const app = await createApp(database, 'warn');
await app.listen(0, '127.0.0.1');
process.send({ url: (await app.getUrl()).replace('[::1]', '127.0.0.1') });
process.on('disconnect', () => process.exit());
