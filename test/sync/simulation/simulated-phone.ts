import { appendFileSync, mkdirSync } from 'node:fs';
import path from 'node:path';
import { byPassword, CrewPhone, Device, type HandedOut, NoAnswer, type PulledItem, Refused, ShutOut, SignedOut, type SignIn } from '../../../examples/crew-client/index.js';
import type { DailyWork } from './daily-work.js';
import type { FaultyWire } from './faulty-wire.js';
import type { Ledger } from './ledger.js';
import type { Random } from './random.js';
import { requireAllowed } from './scope.js';
import { newCode, PASSWORD, type Worker } from './world.js';

const HOUR_S = 3_600;
/** Seconds that a phone's clock is wrong by. */
const CLOCK_ERRORS = [0, 0, 0, 40, -300, 26 * HOUR_S, -26 * HOUR_S];
/** How far the service's figure may be from it: an answer may take this long on a busy machine. */
const SKEW_TOLERANCE_S = 30;
/** Small, so that a photo takes several. */
const PIECE_SIZE = 3 * 1024;
/** How often a phone dies with a page in its hand, of all pages. */
const PAGE_DEATHS = 0.08;

export interface PhoneMakings {
  readonly name: string;
  readonly worker: Worker;
  readonly folder: string;
  readonly wire: FaultyWire;
  readonly random: Random;
  readonly work: DailyWork;
  readonly ledger: Ledger;
  /** With which the phone is enrolled; null: its person signs in by password. */
  readonly code: string | null;
}

export type Try = 'through' | 'failed' | 'shut out';

/** A phone in somebody's pocket: it is worked with, it finds the service or not, and now and then it dies. */
export class SimulatedPhone {
  deaths = 0;
  pages = 0;
  items = 0;
  private phone: CrewPhone;
  private device: Device | null = null;
  private readonly clockError: number;
  private folder: string;
  private replacements = 0;
  private hasPulled = false;
  private turn: Promise<unknown> = Promise.resolve();

  constructor(private readonly makings: PhoneMakings) {
    this.clockError = makings.random.pick(CLOCK_ERRORS);
    this.folder = this.newFolder();
    this.phone = this.open(makings.code);
  }

  get name(): string {
    return this.makings.name;
  }

  get worker(): Worker {
    return this.makings.worker;
  }

  get wire(): FaultyWire {
    return this.makings.wire;
  }

  /** Whether it was given a code to enrol with, in the beginning. */
  get hasCode(): boolean {
    return this.makings.code !== null;
  }

  /** Whether its person could lose it and have it shut out. */
  get isEnrolled(): boolean {
    return this.device?.isEnrolled === true;
  }

  /** How much is not handed in. */
  get waiting(): number {
    return this.phone.waiting.length + this.phone.unsent.length;
  }

  rows(): Map<string, string> {
    return rowsOf(this.phone);
  }

  /** What the phone does and what befalls it come one after the other. */
  exclusively<T>(what: () => Promise<T>): Promise<T> {
    const done = this.turn.then(what);
    this.turn = done.catch(() => undefined);
    return done;
  }

  /** Takes some work down; nobody does on a phone that does not know the jobs yet. */
  takeDown(): void {
    if (!this.hasPulled) return;
    const { random, work, ledger } = this.makings;
    for (let left = random.between(1, 6); left > 0; left--) {
      let last: string | undefined;
      for (const { expected, dependsOnLast, ...task } of work.next(this.phone)) {
        const said = task.take(this.phone, dependsOnLast === true && last !== undefined ? { dependsOn: [last] } : {});
        ledger.note(said, expected, this.name, this.worker.id);
        last = said.id;
      }
    }
  }

  /** One attempt to send and fetch. */
  async tryToSync(): Promise<Try> {
    const { ledger } = this.makings;
    try {
      const { clockSkewSeconds } = await this.phone.push();
      if (clockSkewSeconds !== null && Math.abs(clockSkewSeconds - this.clockError) > SKEW_TOLERANCE_S) {
        ledger.violate(`${this.name}: its clock is ${this.clockError} s off, and the service says ${clockSkewSeconds}`);
      }
      await this.phone.pull();
      this.hasPulled = true;
      await this.phone.pushPhotos();
      return 'through';
    } catch (error) {
      if (this.wire.died) this.restart();
      else if (error instanceof ShutOut) return 'shut out';
      // Codes end with the session that made them, and a killed service may have ended the office's.
      else if (isCodeRefused(error)) this.device?.take(await newCode(this.worker), this.name);
      else if (!(error instanceof NoAnswer || (error instanceof Refused && error.passing))) ledger.violate(`${this.name}: ${String(error)}`);
      return 'failed';
    }
  }

  /** The person has another phone from now on, and what the one before handed out, if it was found. */
  replace(code: string, found: boolean): void {
    const work: HandedOut | null = found ? (JSON.parse(JSON.stringify(this.phone.handOut())) as HandedOut) : null;
    if (!found) this.makings.ledger.lose(this.name);
    this.close();
    this.replacements++;
    this.hasPulled = false;
    this.folder = this.newFolder();
    this.phone = this.open(code);
    if (work !== null) this.phone.takeOver(work);
  }

  /** What a new phone of the same person gets, on a network without faults. */
  async freshCopy(): Promise<Map<string, string>> {
    const fresh = this.crewPhone(this.newFolder('anew'), byPassword(this.worker.email, PASSWORD));
    await fresh.pull();
    const rows = rowsOf(fresh);
    fresh.close();
    return rows;
  }

  complain(what: string): void {
    this.makings.ledger.violate(`${this.name} ${what}`);
  }

  close(): void {
    this.phone.close();
    this.device?.close();
  }

  private newFolder(suffix = String(this.replacements)): string {
    const folder = path.join(this.makings.folder, `${this.makings.name}-${suffix}`);
    mkdirSync(folder);
    return folder;
  }

  private open(code: string | null): CrewPhone {
    if (code === null) return this.crewPhone(this.folder, byPassword(this.worker.email, PASSWORD));
    this.device = new Device(this.folder, this.makings.random.id);
    this.device.take(code, this.name);
    return this.crewPhone(this.folder, this.device);
  }

  private crewPhone(folder: string, signIn: SignIn): CrewPhone {
    const { wire, random, ledger } = this.makings;
    return new CrewPhone({
      folder,
      wire: wire.carry,
      signIn,
      now: () => new Date(Date.now() + this.clockError * 1_000),
      newId: random.id,
      random: random.next,
      pieceSize: PIECE_SIZE,
      onPage: (items) => this.look(items),
      onSettled: (outcomes) => outcomes.forEach((outcome) => ledger.settle(outcome)),
    });
  }

  /** The battery is back. Now and then the last line of the file was being written when it went. */
  private restart(): void {
    const { random, ledger } = this.makings;
    this.deaths++;
    this.wire.died = false;
    this.close();
    if (random.chance(0.5)) appendFileSync(path.join(this.folder, 'phone.jsonl'), '{"event":"settled","outcomes":[{"id":"');
    if (this.device !== null) this.device = new Device(this.folder, random.id);
    this.phone = this.crewPhone(this.folder, this.device ?? byPassword(this.worker.email, PASSWORD));
    const kept = [...this.phone.waiting, ...this.phone.unsent].map(({ id }) => id).sort();
    if (kept.join() !== ledger.unsettledOf(this.name).sort().join()) ledger.violate(`${this.name}: after its death its outbox is not what was noted and not settled`);
  }

  private look(items: readonly PulledItem[]): void {
    const { random } = this.makings;
    this.pages++;
    this.items += items.length;
    for (const item of items) if (item.change === 'upsert') requireAllowed(item, this.makings);
    if (this.wire.faulty && random.chance(PAGE_DEATHS)) {
      this.wire.died = true;
      throw new Error('the phone dies with the page in its hand');
    }
  }
}

function isCodeRefused(error: unknown): boolean {
  return error instanceof SignedOut && error.cause instanceof Refused && error.cause.problem.code === 'enrolment-refused';
}

/** Each row by kind and id, with its revision and all that is in it. */
function rowsOf(phone: CrewPhone): Map<string, string> {
  return new Map(phone.rows().map(({ kind, id, revision, value }) => [`${kind} ${id}`, JSON.stringify([revision, value])]));
}
