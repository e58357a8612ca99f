import ical, { ICalEventStatus, ICalEventTransparency } from 'ical-generator';
import type { CalendarVisit } from './calendar.repository.js';

const HOUR_SECONDS = 3_600;

/**
 * The visits as an iCalendar object. A visit is the same event for ever: its id is the UID, and SEQUENCE rises with
 * every change. Times are instants, so that no calendar has to know the zone of the site. The stamps are those of the
 * visits and not of the moment, so that the same visits are the same bytes.
 * @see RFC 5545; REFRESH-INTERVAL and NAME: RFC 7986
 */
export function calendarText(visits: readonly CalendarVisit[]): string {
  const calendar = ical({ name: 'Visits', prodId: { company: 'Rillbook', product: 'Schedule', language: 'EN' }, ttl: HOUR_SECONDS });
  for (const visit of visits) {
    const { id, version, title, jobNumber, startsAt, endsAt, createdAt, changedAt, address, off } = visit;
    calendar.createEvent({
      id,
      sequence: version - 1,
      stamp: changedAt,
      created: createdAt,
      lastModified: changedAt,
      start: startsAt,
      end: endsAt,
      summary: `${title} (${jobNumber})`,
      description: description(visit),
      location: address,
      status: off ? ICalEventStatus.CANCELLED : ICalEventStatus.CONFIRMED,
      // Somebody who was taken off a visit is free at that time.
      transparency: off ? ICalEventTransparency.TRANSPARENT : ICalEventTransparency.OPAQUE,
    });
  }
  // The library leaves the end of the last line out.
  return `${calendar.toString().trimEnd()}\r\n`;
}

function description({ startTime, timeZone, note, bring, accessNotes, hazards }: CalendarVisit): string {
  const parts: [string, string | null][] = [
    ['', `Starts ${startTime} by the clocks of the site (${timeZone}).`],
    ['', note],
    ['Bring: ', bring.length === 0 ? null : bring.join('; ')],
    ['Access: ', accessNotes],
    ['Hazards: ', hazards],
  ];
  return parts.flatMap(([label, text]) => (text === null ? [] : [label + text])).join('\n\n');
}
