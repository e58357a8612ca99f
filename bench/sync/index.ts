import type { Measurement } from '../measure.js';
import { withDatabase } from '../service.js';
import { benchPolling } from './polling.js';
import { benchPull } from './pull.js';
import { benchPush } from './push.js';
import { makeSyncWorld } from './world.js';

/** Push, pull and polling of phones, against the built service in a process of its own on a durable server. */
export function benchSync(): Promise<Measurement[]> {
  return withDatabase(async ({ database, ownerUrl, startService }) => {
    const world = await makeSyncWorld(database, ownerUrl);
    try {
      const { url, pid } = await startService();
      const { push, ratio } = await benchPush(world, url, database.serviceUrl);
      const pulls = await benchPull(world, url);
      return [push, ratio, ...pulls, await benchPolling(world, url, pid)];
    } finally {
      await world.close();
    }
  });
}
