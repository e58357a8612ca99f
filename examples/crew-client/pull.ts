import type { PulledItem, PullAnswer } from './contract.js';
import type { PhoneStore } from './phone-store.js';
import type { Session } from './session.js';
import { Refused } from './wire.js';

/**
 * Fetches what changed, page by page. A page and the cursor behind it are one record on the disk, so a phone that dies
 * has both or neither.
 * @throws NoAnswer, Refused or SignedOut; the pages that came stay
 */
export async function pullAll(store: PhoneStore, session: Session, onPage: (items: readonly PulledItem[]) => void): Promise<number> {
  let pulled = 0;
  for (let more = true, startedOver = false; more; ) {
    const { cursor } = store.state;
    const page = await session.send<PullAnswer>('GET', `/v1/sync/pull${cursor === null ? '' : `?cursor=${encodeURIComponent(cursor)}`}`).catch((error: unknown) => {
      if (!(error instanceof Refused) || error.status !== 410 || startedOver) throw error;
      return null;
    });
    if (page === null) {
      startedOver = true;
      store.write({ event: 'starts-over' });
      continue;
    }
    onPage(page.items);
    more = page.more;
    pulled += page.items.length;
    // An empty answer from where the phone stands already is most of them: not worth a write.
    if (page.items.length > 0 || page.cursor !== cursor || !more) store.write({ event: 'pulled', items: page.items, cursor: page.cursor, more });
  }
  return pulled;
}
