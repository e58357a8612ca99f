import { appendFileSync, mkdirSync } from 'node:fs';
import path from 'node:path';
import { byPassword, CrewPhone, NoAnswer, Refused, type PulledItem, type Wire } from '../../../examples/crew-client/index.js';
import { DailyWork } from './daily-work.js';
import { FaultyWire } from './faulty-wire.js';
import type { Ledger } from './ledger.js';
import type { Random } from './random.js';
import { PASSWORD, type Worker } from './world.js';

const HOUR_S = 3_600;
/** Seconds that a phone's clock is wrong by. */
const CLOCK_ERRORS = [0, 0, 0, 40, -300, 26 * HOUR_S, -26 * HOUR_S];
/** How far the service's figure may be from it: an answer may take this long on a busy machine. */
const SKEW_TOLERANCE_S = 30;

/** Names of fields with the company's money in them; none may ever reach a crew's phone. */
const MONEY = /"(\w*([pP]rice|[wW]age|[bB]urden|[aA]mount|[mM]argin|laborCost|contractT\w+|unitCost))":/;

/** A phone in somebody's pocket: it is worked with, it finds the service or not, and now and then it dies. */
export class SimulatedPhone {
  readonly wire: FaultyWire;
  deaths = 0;
  pages = 0;
  items = 0;
  private phone: CrewPhone;
  private readonly work: DailyWork;
  private readonly clockError: number;
  private readonly folder: string;

  constructor(
    readonly name: string,
    readonly worker: Worker,
    second: boolean,
    folder: string,
    network: Wire,
    private readonly random: Random,
    private readonly ledger: Ledger,
  ) {
    this.folder = path.join(folder, name);
    mkdirSync(this.folder);
    this.clockError = random.pick(CLOCK_ERRORS);
    this.wire = new FaultyWire(network, random);
    this.work = new DailyWork(worker, random, second);
    this.phone = this.open(this.folder);
  }

  get waiting(): number {
    return this.phone.waiting.length;
  }

  rows(): Map<string, string> {
    return rowsOf(this.phone);
  }

  /** Takes some work down. */
  takeDown(): void {
    const tasks = Array.from({ length: this.random.between(1, 6) }, () => this.work.next(this.phone)).flat();
    // A mutation's id is the phone's to give, so what depends on another one is noted after it.
    let last: string | undefined;
    for (const { note, expected, dependsOnLast } of tasks) {
      const [mutation] = this.phone.note(dependsOnLast === true && last !== undefined ? { ...note, dependsOn: [last] } : note);
      if (mutation === undefined) continue;
      this.ledger.note(mutation, expected, this.name);
      last = mutation.id;
    }
  }

  /** One attempt to send and fetch. @returns whether it came through */
  async tryToSync(): Promise<boolean> {
    try {
      const { clockSkewSeconds } = await this.phone.push();
      if (clockSkewSeconds !== null && Math.abs(clockSkewSeconds - this.clockError) > SKEW_TOLERANCE_S) {
        this.ledger.violate(`${this.name}: its clock is ${this.clockError} s off, and the service says ${clockSkewSeconds}`);
      }
      await this.phone.pull();
      return true;
    } catch (error) {
      if (this.wire.died) this.restart();
      else if (!(error instanceof NoAnswer || (error instanceof Refused && error.passing))) this.ledger.violate(`${this.name}: ${String(error)}`);
      return false;
    }
  }

  /** What a new phone of the same person gets, on a network without faults. */
  async freshCopy(folder: string): Promise<Map<string, string>> {
    mkdirSync(path.join(folder, `${this.name}-anew`));
    const fresh = this.open(path.join(folder, `${this.name}-anew`));
    await fresh.pull();
    const rows = rowsOf(fresh);
    fresh.close();
    return rows;
  }

  close(): void {
    this.phone.close();
  }

  private open(folder: string): CrewPhone {
    return new CrewPhone({
      folder,
      wire: this.wire.carry,
      signIn: byPassword(this.worker.email, PASSWORD),
      now: () => new Date(Date.now() + this.clockError * 1_000),
      newId: this.random.id,
      random: this.random.next,
      onPage: (items) => this.look(items),
      onSettled: (outcomes) => outcomes.forEach((outcome) => this.ledger.settle(outcome)),
    });
  }

  /** The battery is back. Now and then the last line of the file was being written when it went. */
  private restart(): void {
    this.deaths++;
    this.wire.died = false;
    this.phone.close();
    if (this.random.chance(0.5)) appendFileSync(path.join(this.folder, 'phone.jsonl'), '{"event":"settled","outcomes":[{"id":"');
    this.phone = this.open(this.folder);
    const waiting = this.phone.waiting.map(({ id }) => id);
    if (waiting.join() !== this.ledger.unsettledOf(this.name).join()) this.ledger.violate(`${this.name}: after its death its outbox is not what was noted and not settled`);
  }

  /** Every item that reaches the phone is one that its person may see, at some moment of the request. */
  private look(items: readonly PulledItem[]): void {
    this.pages++;
    this.items += items.length;
    for (const item of items) if (item.change === 'upsert') this.requireAllowed(item);
    if (this.wire.faulty && this.random.chance(0.01)) {
      this.wire.died = true;
      throw new Error('the phone dies with the page in its hand');
    }
  }

  private requireAllowed({ kind, id, value }: PulledItem): void {
    const { company, role } = this.worker;
    const row = value as { jobId?: string; personId?: string };
    const job = kind === 'job' ? id : row.jobId;
    const where = `${this.name} (${role}) got ${kind} ${id}`;
    if (job !== undefined && !company.assignments.mayHaveBeenOn(this.worker.id, job, this.wire.sentAt, Date.now())) this.ledger.violate(`${where} of a job whose crew its person was not on`);
    if (kind === 'time-entry' && role === 'crew' && row.personId !== this.worker.id) this.ledger.violate(`${where}, an hour of somebody else`);
    if (MONEY.test(JSON.stringify(value))) this.ledger.violate(`${where} with money in it`);
  }
}

/** Each row by kind and id, with its revision and all that is in it. */
function rowsOf(phone: CrewPhone): Map<string, string> {
  return new Map(phone.rows().map(({ kind, id, revision, value }) => [`${kind} ${id}`, JSON.stringify([revision, value])]));
}
