import type { Lock, Locker } from '@tus/server';

type Release = () => Promise<void> | void;

interface Held {
  readonly release: Release;
  readonly freed: Promise<void>;
  readonly free: () => void;
}

/**
 * One request at a time for each upload. A newcomer asks the one before it to end: a phone whose connection died
 * comes back on another one, while the service still waits for the dead one. The library's own locker asks and waits
 * in a loop that keeps a processor busy for as long.
 */
export class UploadLocks implements Locker {
  private readonly held = new Map<string, Held>();

  newLock(id: string): Lock {
    return {
      lock: (_signal, release) => this.take(id, release),
      unlock: () => Promise.resolve(this.leave(id)),
    };
  }

  private async take(id: string, release: Release): Promise<void> {
    for (let before = this.held.get(id); before !== undefined; before = this.held.get(id)) {
      await before.release();
      await before.freed;
    }
    let free: () => void = () => undefined;
    const freed = new Promise<void>((resolve) => (free = resolve));
    this.held.set(id, { release, freed, free });
  }

  private leave(id: string): void {
    const held = this.held.get(id);
    this.held.delete(id);
    held?.free();
  }
}
