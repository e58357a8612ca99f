// RFC 5545, Internet Calendaring and Scheduling Core Object Specification (2009); RFC 7986 for NAME and
// REFRESH-INTERVAL. M: the rules and the example are given from memory of these texts.
// What is written is read by ical.js, a parser that shares nothing with the library that writes.
import fc from 'fast-check';
import ICAL from 'ical.js';
import type { CalendarVisit } from '../../src/features/calendar/calendar.repository.js';
import { calendarText } from '../../src/features/calendar/calendar-text.js';
import { isCleanText } from '../../src/platform/http/fields/text.js';

const VISIT: CalendarVisit = {
  id: '0190a5c0-0000-7000-8000-000000000001', version: 3, createdAt: new Date('2027-04-01T10:00:00.123Z'), changedAt: new Date('2027-04-02T10:00:00.456Z'),
  startsAt: new Date('2027-05-11T11:30:00Z'), endsAt: new Date('2027-05-11T19:30:00Z'), startTime: '07:30', timeZone: 'America/Detroit',
  bring: [], note: null, off: false, jobNumber: 'J-1', title: 'Mill pond', address: null, accessNotes: null, hazards: null,
};
const written = (changes: Partial<CalendarVisit>): Promise<string> => calendarText([{ ...VISIT, ...changes }]);
const events = (text: string): ICAL.Event[] => new ICAL.Component(ICAL.parse(text) as unknown[]).getAllSubcomponents('vevent').map((event) => new ICAL.Event(event));
/** A line break is written as \n, however it was typed. */
const broken = (text: string): string => text.replace(/\r\n?/g, '\n');

/** Whatever a field of ours admits, with what the format minds put in often. */
const text = fc
  .oneof(
    fc.string({ unit: 'grapheme', minLength: 1, maxLength: 200 }),
    fc.string({ unit: 'binary', minLength: 1, maxLength: 120 }),
    fc.array(fc.constantFrom('\r', '\n', '\r\n', '\t', ' ', ',', ';', ':', '\\', '\\n', '\\,', '"', '^', '%0D', 'é', '水', '\u{1F438}', '\u{1F468}\u200D\u{1F469}', 'BEGIN:VEVENT', '\nEND:VCALENDAR'), { minLength: 1, maxLength: 80 }).map((parts) => parts.join('')),
  )
  .filter(isCleanText);

test('M: 3.1, 3.3.11: whatever people write, lines end with CRLF, are folded at 75 octets between characters, and come back whole', async () => {
  await fc.assert(
    fc.asyncProperty(text, text, text, text, async (title, address, note, tool) => {
      const file = await written({ title, address, note, bring: [tool], accessNotes: title, hazards: address });
      for (const line of file.split('\r\n')) {
        const octets = Buffer.from(line);
        expect(octets.length).toBeLessThanOrEqual(75);
        // A fold within a character would leave halves that are no UTF-8, and a bare break would stand in a line.
        expect(octets.toString()).toBe(line);
        expect(line).not.toMatch(/[^\P{Cc}\t]/u);
      }
      const [event, ...others] = events(file);
      expect(others).toEqual([]);
      expect(event?.summary).toBe(broken(`${title} (J-1)`));
      expect(event?.location).toBe(broken(address));
      expect(event?.description).toBe(broken(['Starts 07:30 by the clocks of the site (America/Detroit).', note, `Bring: ${tool}`, `Access: ${title}`, `Hazards: ${address}`].join('\n\n')));
    }),
  );
});

test('M: 3.3.11: the example of a text with line breaks, and a backslash, a semicolon and a comma are escaped', async () => {
  const file = (await written({ note: 'Project XYZ Final Review\nConference Room - 3B\nCome Prepared.', address: 'a\\b;c,d:e"f' })).replaceAll('\r\n ', '');
  expect(file).toContain('Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.');
  expect(file).toContain('LOCATION:a\\\\b\\;c\\,d:e"f\r\n');
});

test('M: 3.4, 3.6, 3.7: one calendar with one PRODID and VERSION 2.0, and no METHOD, since nobody is invited', async () => {
  const file = await written({});
  expect(file).toMatch(/^BEGIN:VCALENDAR\r\n[^]*\r\nEND:VCALENDAR\r\n$/);
  for (const line of ['BEGIN:VCALENDAR', 'PRODID:-//Rillbook//Schedule//EN', 'VERSION:2.0', 'NAME:Visits', 'REFRESH-INTERVAL;VALUE=DURATION:PT1H']) expect(file.split('\r\n').filter((each) => each === line)).toHaveLength(1);
  expect(file).not.toContain('METHOD');
});

test('M: 3.6.1, 3.8.7: an event has one UID, one DTSTAMP that is that of the change, and instants in UTC (3.3.5, form 2)', async () => {
  const lines = (await written({})).split('\r\n');
  for (const line of ['UID:0190a5c0-0000-7000-8000-000000000001', 'DTSTAMP:20270402T100000Z', 'LAST-MODIFIED:20270402T100000Z', 'CREATED:20270401T100000Z', 'DTSTART:20270511T113000Z', 'DTEND:20270511T193000Z', 'SEQUENCE:2']) {
    const name = line.slice(0, line.indexOf(':') + 1);
    expect(lines.filter((each) => each.startsWith(name))).toEqual([line]);
  }
});

test('M: 3.8.1.11, 3.8.2.7: an event that is off is cancelled and takes no time', async () => {
  expect(await written({})).toMatch(/\r\nTRANSP:OPAQUE\r\n[^]*\r\nSTATUS:CONFIRMED\r\n/);
  expect(await written({ off: true })).toMatch(/\r\nTRANSP:TRANSPARENT\r\n[^]*\r\nSTATUS:CANCELLED\r\n/);
});

test('C: a visit over midnight and over a clock change ends when that much time has really passed', async () => {
  // 6 November 2027 in Detroit, 22:00 for ten hours: the clocks are set back at 2, so it ends at 07:00 there.
  const [event] = events(await written({ startsAt: new Date('2027-11-07T02:00:00Z'), endsAt: new Date('2027-11-07T12:00:00Z') }));
  expect(event?.duration.toSeconds()).toBe(36_000);
});

test('C: a long calendar holds each event once and in order, and is written in pieces between which others are served', async () => {
  const ids = Array.from({ length: 205 }, (_, index) => `visit-${index}`);
  const writing = calendarText(ids.map((id) => ({ ...VISIT, id })));
  let done = false;
  void writing.then(() => (done = true));
  let served = 0;
  for (; !done; served++) await new Promise((resolve) => setImmediate(resolve));
  expect(events(await writing).map(({ uid }) => uid)).toEqual(ids);
  expect(served).toBeGreaterThanOrEqual(10);
});
