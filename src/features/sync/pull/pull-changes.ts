import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { addDays, Clock } from '../../../platform/clock/clock.js';
import { SyncedKinds } from '../../../platform/sync/synced-kinds.js';
import { type Cursor, cursorExpired, decodeCursor, encodeCursor, type Position, type Task } from './cursor.js';
import { FollowJournal } from './follow-journal.js';
import { JournalRepository } from './journal.repository.js';
import type { PulledItemView, PullQuery, PullView } from './pull.dto.js';
import { GiveRows } from './give-rows.js';

const CURSOR_DAYS = 90;
/** Bounds the work of one answer to a phone whose company changed much that is none of its business. */
const MOST_STEPS = 50;
const BEFORE_ALL: Position = { xid: '0', seq: '0' };
const START: Task = { what: 'all', job: null, kind: '', after: null };

/** Gives a phone what it must keep: at the start all of it, then what changes. */
@Injectable()
export class PullChanges {
  constructor(
    private readonly kinds: SyncedKinds,
    private readonly journal: JournalRepository,
    private readonly following: FollowJournal,
    private readonly giving: GiveRows,
    private readonly clock: Clock,
  ) {}

  /** @throws Problem 400 at /cursor for what is none, 410 for a cursor that can't be followed any more */
  async execute(actor: Actor, { cursor, limit }: PullQuery): Promise<PullView> {
    const from = cursor === undefined ? await this.start(actor) : this.checked(actor, decodeCursor(cursor));
    let { position, task } = from;
    let epoch = from.epoch;
    let more = true;
    const items: PulledItemView[] = [];
    for (let step = 0; more && items.length < limit && step < MOST_STEPS; step++) {
      if (task !== null) {
        const given = await this.giving.execute(actor, task, limit - items.length);
        items.push(...given.items);
        task = given.task;
      } else {
        const followed = await this.following.execute(actor, position, limit - items.length);
        if (!followed.known || followed.epoch !== epoch) throw cursorExpired('The cursor belongs to another state of the database.');
        items.push(...followed.items);
        ({ epoch, position, task, more } = followed);
      }
    }
    return { items, cursor: encodeCursor({ ...from, issuedOn: this.clock.today('UTC'), epoch, position, task }), more };
  }

  /** Everything, from a place in the journal that was there before the first row is read. */
  private async start(actor: Actor): Promise<Cursor> {
    const { epoch, end } = await this.journal.after(actor, BEFORE_ALL, [], 0);
    return { epoch, person: actor.personId ?? '', role: actor.role, kinds: this.kindsDigest(), issuedOn: '', position: end, task: START };
  }

  private checked(actor: Actor, cursor: Cursor): Cursor {
    if (cursor.issuedOn < addDays(this.clock.today('UTC'), -CURSOR_DAYS)) throw cursorExpired(`The cursor is older than ${CURSOR_DAYS} days.`);
    if (cursor.person !== actor.personId) throw cursorExpired('The cursor is another person\'s.');
    if (cursor.role !== actor.role) throw cursorExpired('The role of this person has changed, and with it what the phone keeps.');
    if (cursor.kinds !== this.kindsDigest()) throw cursorExpired('The service was renewed, and phones keep other things than before.');
    return cursor;
  }

  private kindsDigest(): string {
    // With their scopes: where these become wider, what a phone never got is not in the journal after its place.
    const scopes = JSON.stringify(this.kinds.all().map(({ kind, belongsTo, own }) => [kind, belongsTo, own]));
    return createHash('sha256').update(scopes).digest('base64url').slice(0, 8);
  }
}
