import type { Random } from './random.js';

export const WORK_BEGINS = Date.parse('2026-02-02T05:00:00Z');
const HOUR_MS = 3_600_000;
const QUARTER_MS = HOUR_MS / 4;
const BAND_HOURS = 6;

/** The local day so many days after the first; no work of the bands goes over midnight there. */
export function dayAfterStart(days: number): string {
  return dayOf(new Date(WORK_BEGINS + days * 24 * HOUR_MS).toISOString());
}

/** The day, in the companies' zone, on which work begins: their clocks are four or five hours behind. */
export function dayOf(startedAt: string): string {
  return new Date(Date.parse(startedAt) - 5 * HOUR_MS).toISOString().slice(0, 10);
}

/**
 * Spans of work, one after the other, in the same six hours of every day. Who logs for a person has hours of the day of
 * their own, so that no two logs overlap but those that are meant to.
 */
export class WorkDays {
  private at: number;
  private day = 0;

  constructor(
    private readonly random: Random,
    private readonly band: 0 | 1 | 2,
  ) {
    this.at = this.startOfBand();
  }

  next(): { startedAt: string; endedAt: string } {
    const start = this.at + this.random.between(0, 1) * QUARTER_MS;
    const end = start + this.random.between(1, 6) * QUARTER_MS;
    if (end > this.startOfBand() + BAND_HOURS * HOUR_MS) {
      this.day += 1;
      this.at = this.startOfBand();
      return this.next();
    }
    this.at = end;
    return { startedAt: new Date(start).toISOString(), endedAt: new Date(end).toISOString() };
  }

  private startOfBand(): number {
    return WORK_BEGINS + (this.day * 24 + this.band * BAND_HOURS) * HOUR_MS;
  }
}
