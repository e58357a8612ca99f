import type { CrewPhone, Note } from '../../../examples/crew-client/index.js';
import type { Expected, Said } from './ledger.js';
import type { Random } from './random.js';
import type { HourBody } from './sequential-model.js';
import { WORK_BEGINS, WorkDays } from './work-days.js';
import { COST_CODES, type Worker } from './world.js';

/** What may be changed once it is there. */
const CHANGEABLE = ['punch-item', 'time-entry'];

export interface Task {
  readonly expected: Expected;
  /** On the task before it. */
  readonly dependsOnLast?: boolean;
  /** @returns what was taken down */
  take(phone: CrewPhone, dependsOn: { readonly dependsOn?: readonly string[] }): Said;
}

type EndedHours = HourBody & { readonly endedAt: string };

interface RowOfHours {
  readonly voidedAt?: string | null;
  /** Missing for what are no hours; null while they run. */
  readonly endedAt?: string | null;
}

/** What a person on a crew takes down in the course of a day: mostly hours, some corrections, some nonsense. */
export class DailyWork {
  private readonly ownDays: WorkDays;
  private readonly daysOfOthers = new Map<string, WorkDays>();
  /** When the hours that this person started will end. */
  private readonly ends = new Map<string, string>();

  constructor(
    private readonly worker: Worker,
    private readonly random: Random,
    private readonly second: boolean,
    private readonly pictures: readonly Buffer[],
  ) {
    this.ownDays = new WorkDays(random, second ? 1 : 0);
  }

  /** One or more tasks that belong together. */
  next(phone: CrewPhone): Task[] {
    const drawn = this.random.next();
    if (drawn < 0.05) return [this.nonsense()];
    if (drawn < 0.12) return this.chained();
    if (drawn < 0.22) return [this.fact()];
    if (drawn < 0.25) return [this.picture()];
    if (drawn < 0.34) return [this.startOrStop(phone)];
    if (drawn < 0.5) return [this.change(phone) ?? this.hour(this.worker, this.ownDays)];
    if (drawn < 0.6 && this.worker.crew.length > 0) return this.worker.crew.map((other) => this.hour(other, this.daysOf(other)));
    return [this.hour(this.worker, this.ownDays)];
  }

  private hour(of: Worker, days: WorkDays): Task {
    return noting({ kind: 'time-entry.log', body: this.hourBody(of, days) }, 'applied');
  }

  private hourBody(of: Worker, days: WorkDays): EndedHours {
    const { jobs } = this.worker.company;
    return {
      id: this.random.id(),
      jobId: this.random.pick(jobs),
      personId: of.id,
      costCode: this.random.pick(COST_CODES),
      ...days.next(),
      unpaidBreakMinutes: this.random.pick([0, 0, 5]),
    };
  }

  /** Refused by any order of things: an unknown cost code, somebody else's hours, or hours that are logged already. */
  private nonsense(): Task {
    const other = this.worker.company.workers.find(({ id }) => id !== this.worker.id);
    const wrong = this.worker.role === 'crew' && other !== undefined && this.random.chance(0.5) ? { personId: other.id } : { costCode: 'no-such-work' };
    return noting({ kind: 'time-entry.log', body: { ...this.hourBody(this.worker, this.ownDays), ...wrong } }, 'rejected');
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
    return noting(note, 'applied');
  }

  private picture(): Task {
    const [bytes, jobId] = [this.random.pick(this.pictures), this.random.pick(this.worker.company.jobs)];
    return {
      expected: 'applied',
      take: (phone) => {
        const { id, body, sha256 } = phone.attach(bytes, { subject: { kind: 'job', id: jobId }, kind: 'photo' });
        return { id, kind: 'attachment.add', body: { ...body, jobId, sha256 } };
      },
    };
  }

  /** One phone of a person starts hours, and whichever they have by then stops what runs. */
  private startOrStop(phone: CrewPhone): Task {
    if (this.second) return this.hour(this.worker, this.ownDays);
    const [runs] = phone.running(this.worker.id);
    const endedAt = runs === undefined ? undefined : this.ends.get(runs);
    if (runs !== undefined && endedAt !== undefined) return { expected: 'applied', take: (on) => on.stop(runs, { endedAt }) };
    const { jobId, personId, costCode, startedAt, endedAt: end } = this.hourBody(this.worker, this.ownDays);
    return {
      expected: 'applied',
      take: (on) => {
        const start = on.start({ jobId, personId, costCode, startedAt });
        this.ends.set((start.body as { id: string }).id, end);
        return start;
      },
    };
  }

  /** A change to something that this phone has, as it has it: others may have been faster. */
  private change(phone: CrewPhone): Task | null {
    const rows = CHANGEABLE.flatMap((kind) => phone.rows(kind)).filter(({ value }) => isChangeable(value));
    if (rows.length === 0) return null;
    const { kind, id, revision } = this.random.pick(rows);
    return noting({ ...this.changed(kind, id), baseRevision: revision ?? 1 }, 'applied or conflict');
  }

  private changed(kind: string, id: string): { kind: string; body: object } {
    const mended = `Mended ${this.random.between(1, 999)}`;
    if (kind === 'punch-item') return { kind: 'punch-item.change', body: { id, description: mended, state: this.random.pick(['open', 'done']) } };
    if (this.random.chance(0.2)) return { kind: 'time-entry.void', body: { id, reason: mended } };
    // The reason: the hours may be approved by now, or their job finished.
    const moved = this.random.chance(0.3) ? { jobId: this.random.pick(this.worker.company.jobs) } : {};
    return { kind: 'time-entry.correct', body: { id, costCode: this.random.pick(COST_CODES), note: mended, reason: mended, ...moved } };
  }

  private daysOf(other: Worker): WorkDays {
    const there = this.daysOfOthers.get(other.id) ?? new WorkDays(this.random, 2);
    this.daysOfOthers.set(other.id, there);
    return there;
  }
}

function noting(note: Note, expected: Expected): Task {
  return { expected, take: (phone, dependsOn) => phone.note({ ...note, ...dependsOn })[0] as Said };
}

function isChangeable(value: RowOfHours): boolean {
  return !value.voidedAt && value.endedAt !== null;
}
