import { Decimal } from '../../decimal.js';

interface Span {
  readonly startedAt: Date;
  readonly endedAt: Date;
}

/** Work from one instant to another, with the parts of it that do not count as worked. */
export interface LoggedSpan extends Span {
  /** Pauses within it that do not count, none over another. */
  readonly pauses: readonly Span[];
  /** Minutes beside them that do not count, whenever they were. */
  readonly unpaidMinutes: number;
}

export interface CutSpan {
  /** Place in `starts` of the workday it lies in. */
  readonly day: number;
  /** 0 where all of it was pause. */
  readonly minutes: Decimal;
}

const MS_PER_MINUTE = 60_000;

/**
 * Cuts work at the instants at which workdays begin, so that a night shift falls into two weeks by the minute and not
 * by its date. Pauses count where they were; minutes without a time are taken from the pieces in proportion.
 * @param starts instants in milliseconds, rising; the last one ends the last day. Work outside of them is left out
 * @see 29 CFR 778.105: a workweek is a fixed recurring period
 */
export function cutByDay(work: LoggedSpan, starts: readonly number[]): CutSpan[] {
  const untimed = work.unpaidMinutes * MS_PER_MINUTE;
  const worked = workedWithin(work, work.startedAt.getTime(), work.endedAt.getTime());
  const pieces: CutSpan[] = [];
  for (let day = dayAt(starts, work.startedAt.getTime()); day < starts.length - 1; day++) {
    const [begins, ends] = [starts[day] ?? Infinity, starts[day + 1] ?? -Infinity];
    if (begins >= work.endedAt.getTime()) break;
    if (ends <= work.startedAt.getTime()) continue;
    const length = workedWithin(work, begins, ends);
    // Hardly any work is cut, and decimals take their time.
    const unpaid = length === worked ? untimed : new Decimal(untimed).times(length).div(worked);
    pieces.push({ day, minutes: new Decimal(length).minus(unpaid).div(MS_PER_MINUTE) });
  }
  return pieces;
}

/** Milliseconds of the work within two instants, without its pauses. */
function workedWithin({ startedAt, endedAt, pauses }: LoggedSpan, from: number, until: number): number {
  const [begins, ends] = [Math.max(from, startedAt.getTime()), Math.min(until, endedAt.getTime())];
  const paused = pauses.map((pause) => Math.max(0, Math.min(ends, pause.endedAt.getTime()) - Math.max(begins, pause.startedAt.getTime())));
  return ends - begins - paused.reduce((sum, length) => sum + length, 0);
}

/** The last day that begins at or before the instant; the first one for an earlier instant. */
function dayAt(starts: readonly number[], instant: number): number {
  let [low, high] = [0, starts.length - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((starts[middle] ?? Infinity) <= instant) low = middle;
    else high = middle - 1;
  }
  return low;
}
