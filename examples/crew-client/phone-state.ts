import { came, type Mutation, type Outcome, type PulledItem } from './contract.js';
import { type Photo, type PhotoRecord, Photos } from './photos.js';
import { RecentHours } from './running-hours.js';

/** A copy of something that the service has. */
export interface Row {
  readonly kind: string;
  readonly id: string;
  readonly revision: number | null;
  readonly value: object;
}

/** A mutation that did not come through, and what the service said: somebody must look at it. */
export interface Trouble {
  readonly mutation: Mutation;
  readonly outcome: Outcome;
}

/** What happened on the phone, in order; the state is what they add up to. */
export type PhoneRecord =
  | { readonly event: 'queued'; readonly mutations: readonly Mutation[] }
  | { readonly event: 'settled'; readonly outcomes: readonly Outcome[] }
  | { readonly event: 'looked-at'; readonly id: string }
  | { readonly event: 'pulled'; readonly items: readonly PulledItem[]; readonly cursor: string; readonly more: boolean }
  | { readonly event: 'starts-over' }
  | PhotoRecord
  | { readonly event: 'snapshot'; readonly state: Snapshot };

export interface Snapshot {
  readonly clientId: string;
  readonly lastCounter: number;
  readonly waiting: readonly Mutation[];
  readonly troubles: readonly Trouble[];
  readonly photos: readonly Photo[];
  readonly recentHours: readonly Mutation[];
  readonly rows: readonly Row[];
  readonly cursor: string | null;
  /** The rows that came since the phone started over, by their keys; null when it did not. */
  readonly renewed: readonly string[] | null;
}

const keyOf = (kind: string, id: string): string => `${kind} ${id}`;

/** All that the phone knows. Nothing but the records changes it, so what is on the disk and what is in memory agree. */
export class PhoneState {
  clientId = '';
  lastCounter = 0;
  cursor: string | null = null;
  readonly waiting = new Map<string, Mutation>();
  readonly troubles = new Map<string, Trouble>();
  readonly photos = new Photos();
  readonly recentHours = new RecentHours();
  readonly rows = new Map<string, Row>();
  private renewed: Set<string> | null = null;

  apply(record: PhoneRecord): void {
    switch (record.event) {
      case 'queued':
        for (const mutation of record.mutations) this.queue(mutation);
        return;
      case 'settled':
        for (const outcome of record.outcomes) this.settle(outcome);
        return;
      case 'looked-at':
        this.troubles.delete(record.id);
        this.photos.drop(record.id);
        return;
      case 'photo-taken':
        this.photos.take(record.photo);
        return;
      case 'photo-sent':
        this.queue(this.photos.sent(record.id, record.uploadId, this.lastCounter + 1));
        return;
      case 'photo-again':
        // Not a trouble: the phone has the bytes, and the service said nothing about the photo itself.
        this.waiting.delete(record.id);
        this.photos.again(record.id, record.newId);
        return;
      case 'photo-refused':
        this.troubles.set(record.outcome.id, { mutation: this.photos.mutation(record.outcome.id, this.lastCounter), outcome: record.outcome });
        return;
      case 'pulled':
        this.take(record.items);
        this.cursor = record.cursor;
        if (!record.more) this.dropWhatDidNotCome();
        return;
      case 'starts-over':
        // The rows stay readable until the new ones are all there; the outbox is not touched at all.
        this.cursor = null;
        this.renewed = new Set();
        return;
      case 'snapshot':
        this.restore(record.state);
    }
  }

  snapshot(): Snapshot {
    const { clientId, lastCounter, cursor } = this;
    return {
      clientId, lastCounter, cursor,
      waiting: [...this.waiting.values()],
      troubles: [...this.troubles.values()],
      photos: this.photos.all(),
      recentHours: this.recentHours.all(),
      rows: [...this.rows.values()],
      renewed: this.renewed === null ? null : [...this.renewed],
    };
  }

  private queue(mutation: Mutation): void {
    this.waiting.set(mutation.id, mutation);
    this.lastCounter = Math.max(this.lastCounter, mutation.counter);
  }

  private settle(outcome: Outcome): void {
    const mutation = this.waiting.get(outcome.id);
    if (mutation === undefined) return;
    this.waiting.delete(outcome.id);
    if (came(outcome) !== 'applied') {
      this.troubles.set(outcome.id, { mutation, outcome });
      return;
    }
    this.photos.drop(outcome.id);
    this.recentHours.applied(mutation);
  }

  private take(items: readonly PulledItem[]): void {
    for (const { kind, id, change, revision, value } of items) {
      const key = keyOf(kind, id);
      this.recentHours.came(id);
      if (change === 'removal') {
        this.rows.delete(key);
        this.renewed?.delete(key);
      } else {
        this.rows.set(key, { kind, id, revision: revision ?? null, value: value ?? {} });
        this.renewed?.add(key);
      }
    }
  }

  private dropWhatDidNotCome(): void {
    const { renewed } = this;
    if (renewed === null) return;
    for (const key of this.rows.keys()) if (!renewed.has(key)) this.rows.delete(key);
    this.renewed = null;
  }

  private restore(state: Snapshot): void {
    this.clientId = state.clientId;
    this.lastCounter = state.lastCounter;
    this.cursor = state.cursor;
    for (const mutation of state.waiting) this.waiting.set(mutation.id, mutation);
    for (const trouble of state.troubles) this.troubles.set(trouble.mutation.id, trouble);
    for (const photo of state.photos) this.photos.take(photo);
    for (const mutation of state.recentHours) this.recentHours.applied(mutation);
    for (const row of state.rows) this.rows.set(keyOf(row.kind, row.id), row);
    this.renewed = state.renewed === null ? null : new Set(state.renewed);
  }
}
