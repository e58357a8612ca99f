import ical, { type ICalCalendar, type ICalEventData, ICalEventStatus, ICalEventTransparency } from 'ical-generator';
import type { CalendarVisit } from './calendar.repository.js';
import { foldLines } from './fold-lines.js';

const HOUR_SECONDS = 3_600;
/** Written between two breaths: some milliseconds of the longest that people may write. */
const EVENTS_AT_ONCE = 20;

/**
 * The visits as an iCalendar object, in pieces: a feed of more than a thousand long visits takes a second, and others
 * are to be served meanwhile. A visit is the same event for ever: its id is the UID, and SEQUENCE rises with
 * every change. Times are instants, so that no calendar has to know the zone of the site. The stamps are those of the
 * visits and not of the moment, so that the same visits are the same bytes.
 * @see RFC 5545; REFRESH-INTERVAL and NAME: RFC 7986
 */
export async function calendarText(visits: readonly CalendarVisit[]): Promise<string> {
  const calendar = ical({ name: 'Visits', prodId: { company: 'Rillbook', product: 'Schedule', language: 'EN' }, ttl: HOUR_SECONDS });
  const [head, end] = aroundEvents(calendar);
  const pieces: string[] = [];
  for (const [index, visit] of visits.entries()) {
    pieces.push(foldLines(calendar.createEvent(eventOf(visit)).toString()));
    if (index % EVENTS_AT_ONCE === EVENTS_AT_ONCE - 1) await new Promise((resolve) => setImmediate(resolve));
  }
  return [head, ...pieces, end].join('');
}

/** What stands before and behind the events. The library leaves the end of the last line out. */
function aroundEvents(calendar: ICalCalendar): [string, string] {
  const empty = `${calendar.toString().trimEnd()}\r\n`;
  const place = empty.lastIndexOf('END:VCALENDAR');
  return [empty.slice(0, place), empty.slice(place)];
}

function eventOf(visit: CalendarVisit): ICalEventData {
  const { id, version, title, jobNumber, startsAt, endsAt, createdAt, changedAt, address, off } = visit;
  return {
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
  };
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
