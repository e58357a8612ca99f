import { Refused } from '../../../examples/crew-client/index.js';
import { type Course, pause } from './mishaps.js';
import type { Random } from './random.js';
import { Spells } from './spells.js';
import { dayAfterStart } from './work-days.js';
import type { Firm } from './world.js';

const PAUSE_MS = 200;
/** So many days of work lie within reach of the office's lock. */
const DAYS_TO_LOCK = 12;

interface HeldHour {
  readonly id: string;
}

/**
 * What the office does with hours while phones send them: it approves days, locks days and opens them again, ends jobs
 * and takes them up again, and lets some of what was held meanwhile count.
 */
export class OfficeWork {
  readonly closedJobs = new Spells<string>();
  readonly lockedDays = new Spells<string>();
  /** Entries that the office may have changed. */
  readonly touched = new Set<string>();
  readonly released = new Set<string>();
  approvals = 0;

  constructor(
    private readonly firm: Pick<Firm, 'office' | 'jobs' | 'workers'>,
    private readonly random: Random,
  ) {}

  /** Each kind of work goes on beside the others, for as long as there is any. */
  async live(course: Course): Promise<void> {
    const works = [() => this.approve(), () => this.lock(), () => this.close(), () => this.release()];
    await Promise.all(works.map(async (work) => {
      for (; !course.done; await pause(PAUSE_MS)) await work();
    }));
  }

  /** Lets everything count that is held still. */
  async releaseAll(): Promise<void> {
    for (const { id } of await this.firm.office.all<HeldHour>('/v1/time-entries?held=true')) await this.releaseOne(id);
  }

  private async approve(): Promise<void> {
    const body = { personId: this.random.pick(this.firm.workers).id, day: this.someDay() };
    const withdraws = this.random.chance(0.2);
    await this.unlessRefused(async () => {
      const answer = await this.firm.office.ask<{ entries: HeldHour[] }>('POST', `/v1/time-approvals${withdraws ? '/withdraw' : ''}`, withdraws ? { ...body, reason: 'Something is missing' } : body);
      for (const { id } of answer.entries) this.touched.add(id);
      this.approvals++;
    });
  }

  private async lock(): Promise<void> {
    const through = this.someDay();
    const move = (lockedThrough: string | null) => this.firm.office.ask('POST', '/v1/time-lock', { lockedThrough });
    await this.lockedDays.live(through, () => move(through), () => this.aWhile(), () => move(null));
    await this.aWhile();
  }

  private async close(): Promise<void> {
    const [job, finishes] = [this.random.pick(this.firm.jobs), this.random.chance(0.7)];
    const { office } = this.firm;
    const begin = () => (finishes ? office.ask('POST', `/v1/jobs/${job}/finish`) : office.ask('POST', `/v1/jobs/${job}/cancel`, { reason: 'The customer thinks it over' }));
    await this.closedJobs.live(job, begin, () => this.aWhile(), () => office.ask('POST', `/v1/jobs/${job}/reopen`));
  }

  private async release(): Promise<void> {
    const { items } = await this.firm.office.ask<{ items: HeldHour[] }>('GET', '/v1/time-entries?held=true&limit=20');
    for (const { id } of items) if (this.random.chance(0.1)) await this.releaseOne(id);
  }

  /** The hours may run, or be void by now. */
  private async releaseOne(id: string): Promise<void> {
    this.touched.add(id);
    this.released.add(id);
    await this.unlessRefused(() => this.firm.office.ask('POST', `/v1/time-entries/${id}/release`));
  }

  private async unlessRefused(work: () => Promise<unknown>): Promise<void> {
    try {
      await work();
    } catch (error) {
      if (!(error instanceof Refused) || error.status !== 409) throw error;
    }
  }

  private someDay(): string {
    return dayAfterStart(this.random.between(0, DAYS_TO_LOCK));
  }

  private aWhile(): Promise<void> {
    return pause(this.random.between(200, 1_200));
  }
}
