import { Decimal } from '../../domain/decimal.js';
import { type Break, paidMinutes, requireBreaksWithin, unpaidBreakSeconds } from '../../domain/worktime/index.js';
import { toInstant } from '../../platform/clock/device-time.js';
import { invalidInput } from '../../platform/http/problems.js';
import type { TimeEntryBody } from './time-entries.dto.js';
import type { StoredBreak, TimeEntryEntity } from './time-entry.entity.js';

const A_DAY_IN_MS = 24 * 60 * 60 * 1000;

/** The time of an entry as its row keeps it. */
export type WorkedTime = Pick<TimeEntryEntity, 'startedAt' | 'endedAt' | 'unpaidBreakMinutes' | 'breaks' | 'unpaidSpanSeconds'>;

/**
 * The time of an entry as instants; without an end it runs.
 * @throws DomainError or Problem 400 at /endedAt, /unpaidBreakMinutes or below /breaks
 */
export function workedTime(body: Pick<TimeEntryBody, 'startedAt' | 'endedAt' | 'unpaidBreakMinutes' | 'breaks'>): WorkedTime {
  const startedAt = toInstant(body.startedAt);
  const endedAt = body.endedAt ? toInstant(body.endedAt) : null;
  const breaks = (body.breaks ?? []).map((pause) => ({ startedAt: toInstant(pause.startedAt), endedAt: toInstant(pause.endedAt), paid: pause.paid }));
  const time = {
    startedAt, endedAt, unpaidBreakMinutes: body.unpaidBreakMinutes ?? 0,
    breaks: breaks.map((pause) => ({ startedAt: pause.startedAt.toISOString(), endedAt: pause.endedAt.toISOString(), paid: pause.paid })),
    unpaidSpanSeconds: unpaidBreakSeconds(breaks),
  };
  const paid = paidMinutesOf(time);
  requireBreaksWithin(breaks, time);
  if (paid?.lt(0) === true) throw invalidInput([{ pointer: '/unpaidBreakMinutes', detail: 'must, together with the breaks, not be longer than the work' }]);
  if (endedAt !== null && endedAt.getTime() - startedAt.getTime() > A_DAY_IN_MS) {
    throw invalidInput([{ pointer: '/endedAt', detail: 'must be at most 24 hours after the start; log each day on its own' }]);
  }
  return time;
}

/** Minutes to be paid, unrounded; null while the hours run. */
export function paidMinutesOf({ startedAt, endedAt, unpaidBreakMinutes, unpaidSpanSeconds }: Omit<WorkedTime, 'breaks'>): Decimal | null {
  return endedAt === null ? null : paidMinutes({ startedAt, endedAt, unpaidBreakMinutes }).minus(new Decimal(unpaidSpanSeconds).div(60));
}

export function toBreaks(stored: readonly StoredBreak[]): Break[] {
  return stored.map(({ startedAt, endedAt, paid }) => ({ startedAt: new Date(startedAt), endedAt: new Date(endedAt), paid }));
}
