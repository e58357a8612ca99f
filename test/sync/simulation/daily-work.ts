import type { CrewPhone, Note } from '../../../examples/crew-client/index.js';
import type { Expected } from './ledger.js';
import type { Random } from './random.js';
import type { HourBody } from './sequential-model.js';
import { WORK_BEGINS, WorkDays } from './work-days.js';
import { COST_CODES, type Worker } from './world.js';

/** What may be changed once it is there. */
const CHANGEABLE = ['punch-item', 'time-entry'];

export interface Task {
  readonly note: Note;
  readonly expected: Expected;
  /** On the task before it. */
  readonly dependsOnLast?: boolean;
}

/** What a person on a crew takes down in the course of a day: mostly hours, some corrections, some nonsense. */
export class DailyWork {
  private readonly ownDays: WorkDays;
  private readonly daysOfOthers = new Map<string, WorkDays>();

  constructor(
    private readonly worker: Worker,
    private readonly random: Random,
    second: boolean,
  ) {
    this.ownDays = new WorkDays(random, second ? 1 : 0);
  }

  /** One or more tasks that belong together. */
  next(phone: CrewPhone): Task[] {
    const drawn = this.random.next();
    if (drawn < 0.05) return [this.nonsense()];
    if (drawn < 0.12) return this.chained();
    if (drawn < 0.22) return [this.fact()];
    if (drawn < 0.4) return [this.change(phone) ?? this.hour(this.worker, this.ownDays)];
    if (drawn < 0.5 && this.worker.crew.length > 0) return this.worker.crew.map((other) => this.hour(other, this.daysOf(other)));
    return [this.hour(this.worker, this.ownDays)];
  }

  private hour(of: Worker, days: WorkDays): Task {
    const { jobs } = this.worker.company;
    const body: HourBody = {
      id: this.random.id(),
      jobId: this.random.pick(jobs),
      personId: of.id,
      costCode: this.random.pick(COST_CODES),
      ...days.next(),
      unpaidBreakMinutes: this.random.pick([0, 0, 5]),
    };
    return { note: { kind: 'time-entry.log', body }, expected: 'applied' };
  }

  /** Refused by any order of things: an unknown cost code, somebody else's hours, or hours that are logged already. */
  private nonsense(): Task {
    const { note } = this.hour(this.worker, this.ownDays);
    const other = this.worker.company.workers.find(({ id }) => id !== this.worker.id);
    const wrong = this.worker.role === 'crew' && other !== undefined && this.random.chance(0.5) ? { personId: other.id } : { costCode: 'no-such-work' };
    return { note: { ...note, body: { ...note.body, ...wrong } }, expected: 'rejected' };
  }

  /** Two things of which the second makes no sense without the first, sound or not. */
  private chained(): Task[] {
    const first = this.random.chance(0.7) ? this.hour(this.worker, this.ownDays) : this.nonsense();
    return [first, { ...this.fact(), dependsOnLast: true, expected: first.expected }];
  }

  private fact(): Task {
    const place = { id: this.random.id(), jobId: this.random.pick(this.worker.company.jobs) };
    const note = this.random.chance(0.5)
      ? { kind: 'load.record', body: { ...place, hauledAt: new Date(WORK_BEGINS).toISOString(), material: 'sediment', loads: this.random.between(1, 4) } }
      : { kind: 'punch-item.add', body: { ...place, description: `Reset ${this.random.between(1, 9)} stones at the skimmer` } };
    return { note, expected: 'applied' };
  }

  /** A change to something that this phone has, as it has it: others may have been faster. */
  private change(phone: CrewPhone): Task | null {
    const rows = CHANGEABLE.flatMap((kind) => phone.rows(kind)).filter(({ value }) => !(value as { voidedAt?: string | null }).voidedAt);
    if (rows.length === 0) return null;
    const { kind, id, revision } = this.random.pick(rows);
    return { note: { ...this.changed(kind, id), baseRevision: revision ?? 1 }, expected: 'applied or conflict' };
  }

  private changed(kind: string, id: string): { kind: string; body: object } {
    const mended = `Mended ${this.random.between(1, 999)}`;
    if (kind === 'punch-item') return { kind: 'punch-item.change', body: { id, description: mended, state: this.random.pick(['open', 'done']) } };
    if (this.random.chance(0.2)) return { kind: 'time-entry.void', body: { id, reason: mended } };
    return { kind: 'time-entry.correct', body: { id, costCode: this.random.pick(COST_CODES), note: mended } };
  }

  private daysOf(other: Worker): WorkDays {
    const there = this.daysOfOthers.get(other.id) ?? new WorkDays(this.random, 2);
    this.daysOfOthers.set(other.id, there);
    return there;
  }
}
