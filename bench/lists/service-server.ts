// The service as it is in production, in a process of its own.
import { createApp } from '../../src/create-app.js';
import type { Provisioned } from '../../src/platform/database/provision.js';

const { database } = JSON.parse(process.env['BENCH_INPUT'] ?? '{}') as { database: Provisioned };
const app = await createApp(database, 'warn');
await app.listen(0, '127.0.0.1');
process.send?.({ url: (await app.getUrl()).replace('[::1]', '127.0.0.1') });
process.on('disconnect', () => process.exit());
