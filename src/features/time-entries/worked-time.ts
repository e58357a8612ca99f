import { Temporal } from 'temporal-polyfill';
import { paidMinutes, type WorkedSpan } from '../../domain/worktime/index.js';
import { invalidInput } from '../../platform/http/problems.js';
import type { TimeEntryBody } from './time-entries.dto.js';

const A_DAY_IN_MS = 24 * 60 * 60 * 1000;

/**
 * The time of an entry as instants.
 * @throws DomainError or Problem 400 at /endedAt or /unpaidBreakMinutes
 */
export function workedTime(body: Pick<TimeEntryBody, 'startedAt' | 'endedAt' | 'unpaidBreakMinutes'>): WorkedSpan {
  const span = { startedAt: instant(body.startedAt), endedAt: instant(body.endedAt), unpaidBreakMinutes: body.unpaidBreakMinutes ?? 0 };
  paidMinutes(span);
  if (span.endedAt.getTime() - span.startedAt.getTime() > A_DAY_IN_MS) {
    throw invalidInput([{ pointer: '/endedAt', detail: 'must be at most 24 hours after the start; log each day on its own' }]);
  }
  return span;
}

/** Not `new Date(text)`, which knows no leap second: a time that the field accepted would fail only in the database. */
function instant(text: string): Date {
  return new Date(Temporal.Instant.from(text).epochMilliseconds);
}
