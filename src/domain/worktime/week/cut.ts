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
  /** Place in `starts` of the stretch it lies in. */
  readonly place: number;
  /** Whole; 0 where all of it was pause. */
  readonly milliseconds: number;
}

const MS_PER_MINUTE = 60_000;

/**
 * Cuts work at instants, so that a night shift falls into two weeks by the minute and not by its date. Pauses count
 * where they were; minutes without a time are taken from the pieces in proportion, to the millisecond, so that the
 * pieces add up to the work.
 * @param starts instants in milliseconds, rising; the last one ends the last stretch. Work outside of them is left out
 * @see 29 CFR 778.105: a workweek is a fixed recurring period
 */
export function cutWork(work: LoggedSpan, starts: readonly number[]): CutSpan[] {
  const untimed = work.unpaidMinutes * MS_PER_MINUTE;
  const worked = workedUntil(work, work.endedAt.getTime());
  // Rounded on the running sum: what one piece loses by it the next one gets.
  const counted = (until: number): number => {
    const length = workedUntil(work, until);
    return length === 0 ? 0 : length - Math.round((untimed * length) / worked);
  };
  const pieces: CutSpan[] = [];
  for (let place = placeOf(starts, work.startedAt.getTime()); place < starts.length - 1; place++) {
    const [begins, ends] = [starts[place] ?? Infinity, starts[place + 1] ?? -Infinity];
    if (begins >= work.endedAt.getTime()) break;
    if (ends > work.startedAt.getTime()) pieces.push({ place, milliseconds: counted(ends) - counted(begins) });
  }
  return pieces;
}

/** The last stretch that begins at or before the instant; the first one for an earlier instant. */
export function placeOf(starts: readonly number[], instant: number): number {
  let [low, high] = [0, starts.length - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((starts[middle] ?? Infinity) <= instant) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Milliseconds of the work up to an instant, without its pauses. */
function workedUntil({ startedAt, endedAt, pauses }: LoggedSpan, until: number): number {
  const upTo = (span: Span): number => Math.max(0, Math.min(until, span.endedAt.getTime()) - span.startedAt.getTime());
  return pauses.reduce((sum, pause) => sum - upTo(pause), upTo({ startedAt, endedAt }));
}
