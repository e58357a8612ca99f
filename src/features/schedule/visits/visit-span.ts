import { Temporal } from 'temporal-polyfill';
import { invalidInput } from '../../../platform/http/problems.js';

export interface VisitSpan {
  readonly startsAt: Date;
  readonly endsAt: Date;
}

/**
 * The instants of a visit that is given by the site's clocks. Of a time that comes twice, when the clocks are set back,
 * it is the first; the length is time that really passes.
 * @param startTime HH:MM
 * @throws Problem 400 at /startTime for a time that the clocks skip on that day
 */
export function visitSpan(day: string, startTime: string, lengthMinutes: number, timeZone: string): VisitSpan {
  const local = Temporal.PlainDate.from(day).toPlainDateTime(Temporal.PlainTime.from(startTime));
  const start = local.toZonedDateTime(timeZone, { disambiguation: 'earlier' });
  if (!start.toPlainDateTime().equals(local)) {
    throw invalidInput([{ pointer: '/startTime', detail: `does not exist on ${day} in ${timeZone}: the clocks are set forward over it; give an earlier or a later time` }]);
  }
  const startsAt = new Date(start.epochMilliseconds);
  return { startsAt, endsAt: new Date(startsAt.getTime() + lengthMinutes * 60_000) };
}
