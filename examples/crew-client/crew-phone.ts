import path from 'node:path';
import { v7 as uuidv7 } from 'uuid';
import { waitBefore } from './backoff.js';
import type { Mutation, Outcome, PulledItem } from './contract.js';
import type { Row, Trouble } from './phone-state.js';
import { PhoneStore } from './phone-store.js';
import { pullAll } from './pull.js';
import { pushAll, type PushReport } from './push.js';
import { Session, type SignIn } from './session.js';
import { NoAnswer, Refused, type Wire } from './wire.js';

export interface PhoneParts {
  /** A folder that is there, of this phone alone. */
  readonly folder: string;
  readonly wire: Wire;
  readonly signIn: SignIn;
  /** The clock on the wall; it may be wrong. */
  readonly now?: () => Date;
  /** Milliseconds since some moment; never goes back. */
  readonly elapsed?: () => number;
  readonly newId?: () => string;
  readonly random?: () => number;
  readonly sleep?: (milliseconds: number) => Promise<void>;
  /** Sees every page that comes, before it is kept. */
  readonly onPage?: (items: readonly PulledItem[]) => void;
  /** Hears what became of mutations, once that is on the disk. */
  readonly onSettled?: (outcomes: readonly Outcome[]) => void;
}

/** What to write down: the same body that the route for it takes. */
export interface Note {
  readonly kind: string;
  readonly body: object;
  readonly baseRevision?: number;
  readonly dependsOn?: readonly string[];
}

/** A phone of a crew: what is written down is kept and arrives once, whatever happens to signal, battery and service. */
export class CrewPhone {
  private readonly store: PhoneStore;
  private readonly session: Session;
  private readonly now: () => Date;
  private readonly newId: () => string;
  private readonly random: () => number;
  private readonly sleep: (milliseconds: number) => Promise<void>;

  constructor(private readonly parts: PhoneParts) {
    this.now = parts.now ?? (() => new Date());
    this.newId = parts.newId ?? uuidv7;
    this.random = parts.random ?? Math.random;
    this.sleep = parts.sleep ?? ((milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds)));
    this.store = new PhoneStore(path.join(parts.folder, 'phone.jsonl'), this.newId);
    this.session = new Session(path.join(parts.folder, 'session.jsonl'), parts.wire, parts.signIn, parts.elapsed ?? (() => performance.now()));
  }

  /** Takes something down; on the disk when it returns, with or without a signal. */
  note(...notes: readonly Note[]): Mutation[] {
    const { lastCounter } = this.store.state;
    const recordedAt = this.now().toISOString();
    const mutations = notes.map((note, index) => ({ id: this.newId(), counter: lastCounter + index + 1, recordedAt, ...note }));
    if (mutations.length > 0) this.store.write({ event: 'queued', mutations });
    return mutations;
  }

  /** One attempt to send everything. @throws NoAnswer, Refused or SignedOut */
  push(): Promise<PushReport> {
    return pushAll(this.store, this.session, this.now, this.parts.onSettled ?? (() => undefined));
  }

  /** One attempt to fetch everything. @returns how many items came @throws NoAnswer, Refused or SignedOut */
  pull(): Promise<number> {
    return pullAll(this.store, this.session, this.parts.onPage ?? (() => undefined));
  }

  /**
   * Sends, then fetches, and tries again when there is no signal or the service is away, with longer and longer waits.
   * @param attempts after which it gives up until it is asked again
   * @throws Refused or SignedOut, which no waiting helps against, or the failure of the last attempt
   */
  async sync(attempts = 8): Promise<PushReport> {
    for (let failures = 1; ; failures++) {
      try {
        const report = await this.push();
        await this.pull();
        return report;
      } catch (error) {
        const passing = error instanceof NoAnswer || (error instanceof Refused && error.passing);
        if (!passing || failures >= attempts) throw error;
        await this.sleep(waitBefore(failures, error instanceof Refused ? error.retryAfter : null, this.random));
      }
    }
  }

  /** What is not settled yet, oldest first. */
  get waiting(): readonly Mutation[] {
    return [...this.store.state.waiting.values()];
  }

  /** What came to nothing, until somebody has looked at it. */
  get troubles(): readonly Trouble[] {
    return [...this.store.state.troubles.values()];
  }

  rows(kind?: string): readonly Row[] {
    return [...this.store.state.rows.values()].filter((row) => kind === undefined || row.kind === kind);
  }

  /** Somebody saw it and lets it go. */
  lookedAt(id: string): void {
    this.store.write({ event: 'looked-at', id });
  }

  /**
   * Somebody saw what the others made of the record in the meantime, and wants the change all the same: it is sent
   * anew, on the revision that they made.
   * @throws Error when there is no such conflict
   */
  insist(id: string, body?: object): Mutation {
    const trouble = this.store.state.troubles.get(id);
    const revision = trouble?.outcome.revision;
    if (trouble === undefined || revision === undefined) throw new Error('There is no conflict of that id.');
    const [mutation] = this.note({ kind: trouble.mutation.kind, body: body ?? trouble.mutation.body, baseRevision: revision });
    this.lookedAt(id);
    return mutation as Mutation;
  }

  close(): void {
    this.store.close();
    this.session.close();
  }
}
