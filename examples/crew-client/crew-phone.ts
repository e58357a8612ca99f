import path from 'node:path';
import { v7 as uuidv7 } from 'uuid';
import { waitBefore } from './backoff.js';
import type { AttachmentBody, Mutation, Outcome, PulledItem } from './contract.js';
import { type HandedOut, handOut, takeOver } from './hand-over.js';
import type { Row, Trouble } from './phone-state.js';
import { PhoneStore } from './phone-store.js';
import { PhotoFiles } from './photo-files.js';
import type { Photo } from './photos.js';
import { pullAll } from './pull.js';
import { pushAll, type PushReport } from './push.js';
import { runningOn, type StartedWork } from './running-hours.js';
import { sendPhotos, unsentPhotos } from './send-photos.js';
import { Session, type SignIn } from './session.js';
import { NoAnswer, Refused, type Wire } from './wire.js';

const PIECE_SIZE = 256 * 1024;

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
  /** Bytes of a photo that go in one request. */
  readonly pieceSize?: number;
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
  private readonly files: PhotoFiles;
  private readonly session: Session;
  private readonly now: () => Date;
  private readonly newId: () => string;
  private readonly sleep: (milliseconds: number) => Promise<void>;
  private conversation: Promise<unknown> = Promise.resolve();

  constructor(private readonly parts: PhoneParts) {
    this.now = parts.now ?? (() => new Date());
    this.newId = parts.newId ?? uuidv7;
    this.sleep = parts.sleep ?? ((milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds)));
    this.store = new PhoneStore(path.join(parts.folder, 'phone.jsonl'), this.newId);
    this.files = new PhotoFiles(path.join(parts.folder, 'photos'));
    this.session = new Session(path.join(parts.folder, 'session.jsonl'), parts.wire, parts.signIn, parts.elapsed ?? (() => performance.now()));
    this.dropFiles();
  }

  /** Takes something down; on the disk when it returns, with or without a signal. */
  note(...notes: readonly Note[]): Mutation[] {
    const { lastCounter } = this.store.state;
    const recordedAt = this.now().toISOString();
    const mutations = notes.map((note, index) => ({ id: this.newId(), counter: lastCounter + index + 1, recordedAt, ...note }));
    if (mutations.length > 0) this.store.write({ event: 'queued', mutations });
    return mutations;
  }

  /** Somebody begins to work now. @returns the mutation; the `id` of its body is the entry's */
  start(work: StartedWork): Mutation {
    const [mutation] = this.note({ kind: 'time-entry.start', body: { id: this.newId(), startedAt: this.now().toISOString(), ...work } });
    return mutation as Mutation;
  }

  /** The running hours end now. @param entryId one of `running` */
  stop(entryId: string, body: { readonly endedAt?: string; readonly unpaidBreakMinutes?: number } = {}): Mutation {
    // Without it a start that is still on its way would be overtaken, and its end refused.
    const start = this.waiting.find((mutation) => mutation.kind === 'time-entry.start' && (mutation.body as { id?: string }).id === entryId);
    const [mutation] = this.note({ kind: 'time-entry.stop', body: { id: entryId, endedAt: this.now().toISOString(), ...body }, ...(start === undefined ? {} : { dependsOn: [start.id] }) });
    return mutation as Mutation;
  }

  /** The ids of a person's hours that run, as far as this phone knows. */
  running(personId: string): string[] {
    return runningOn(this.store.state, personId);
  }

  /** Takes a photo, a receipt or a document down; its bytes are on the disk when it returns. */
  attach(bytes: Uint8Array, body: Omit<AttachmentBody, 'id'>, dependsOn?: readonly string[]): Photo {
    const photo: Photo = {
      id: this.newId(), recordedAt: this.now().toISOString(), body: { id: this.newId(), ...body },
      sha256: this.files.keep(bytes), uploadId: null, ...(dependsOn === undefined ? {} : { dependsOn }),
    };
    this.store.write({ event: 'photo-taken', photo });
    return photo;
  }

  /** One attempt to send everything but the photos. @throws NoAnswer, Refused or SignedOut */
  push(): Promise<PushReport> {
    return this.inTurn(() => this.pushNow());
  }

  /** One attempt to send the photos and to attach them. @returns how many arrived @throws NoAnswer, Refused or SignedOut */
  pushPhotos(): Promise<number> {
    return this.inTurn(async () => {
      const sent = await sendPhotos(this.store, this.files, this.session, this.parts.pieceSize ?? PIECE_SIZE);
      if (sent > 0) await this.pushNow();
      this.dropFiles();
      return sent;
    });
  }

  /** One attempt to fetch everything. @returns how many items came @throws NoAnswer, Refused or SignedOut */
  pull(): Promise<number> {
    return this.inTurn(() => pullAll(this.store, this.session, this.parts.onPage ?? (() => undefined)));
  }

  /**
   * Sends and fetches, and tries again when there is no signal or the service is away, with longer and longer waits.
   * Hours go first and photos last: a picture of four megabytes must not stand before a line of text.
   * @param attempts after which it gives up until it is asked again
   * @throws Refused or SignedOut, which no waiting helps against, or the failure of the last attempt
   */
  async sync(attempts = 8): Promise<PushReport> {
    for (let failures = 1; ; failures++) {
      try {
        const report = await this.push();
        await this.pull();
        if ((await this.pushPhotos()) > 0) await this.pull();
        return report;
      } catch (error) {
        const passing = error instanceof NoAnswer || (error instanceof Refused && error.passing);
        if (!passing || failures >= attempts) throw error;
        await this.sleep(waitBefore(failures, error instanceof Refused ? error.retryAfter : null, this.parts.random ?? Math.random));
      }
    }
  }

  /** What is not settled yet, oldest first. */
  get waiting(): readonly Mutation[] {
    return [...this.store.state.waiting.values()];
  }

  /** Photos whose bytes are not all at the service. */
  get unsent(): readonly Photo[] {
    return unsentPhotos(this.store);
  }

  /** What came to nothing, until somebody has looked at it. */
  get troubles(): readonly Trouble[] {
    return [...this.store.state.troubles.values()];
  }

  rows(kind?: string): readonly Row[] {
    return [...this.store.state.rows.values()].filter((row) => kind === undefined || row.kind === kind);
  }

  /** Somebody saw it and lets it go; of a photo, the bytes too. */
  lookedAt(id: string): void {
    this.store.write({ event: 'looked-at', id });
    this.dropFiles();
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

  /** What is not handed in, for a phone that was shut out or is about to be given up. It stays here too. */
  handOut(): HandedOut {
    return handOut(this.store, this.files);
  }

  /** Takes over what another phone handed out; on the disk when it returns. */
  takeOver(work: HandedOut): void {
    takeOver(this.store, this.files, work);
  }

  close(): void {
    this.store.close();
    this.session.close();
  }

  private pushNow(): Promise<PushReport> {
    const { store, session, now, newId, parts } = this;
    return pushAll({ store, session, now, newId, onSettled: parts.onSettled ?? (() => undefined) });
  }

  /** One conversation at a time: a timer and a thumb may both want to send, and would settle everything twice. */
  private inTurn<T>(work: () => Promise<T>): Promise<T> {
    const done = this.conversation.then(work, work);
    this.conversation = done.catch(() => undefined);
    return done;
  }

  private dropFiles(): void {
    this.files.keepOnly(new Set(this.store.state.photos.all().map(({ sha256 }) => sha256)));
  }
}
