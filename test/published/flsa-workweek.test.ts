// 29 CFR 778.105 (V): a workweek is a fixed and regularly recurring period of 168 hours that need not be the calendar
// week. A local week is 167 or 169 hours when the clocks change; it is anchored to a local weekday and hour (P, our
// choice). Transitions: IANA tz database, C, confirmed with Python's zoneinfo.
import { weekOf, WorkCalendar } from '../../src/features/work-weeks/work-calendar.js';

const hoursOfWeek = (zone: string, day: string): number => {
  const week = weekOf({ timeZone: zone, startsOn: 'monday', startsAt: '00:00' }, day);
  return (week.endsAt.getTime() - week.startsAt.getTime()) / 3_600_000;
};

test.each([
  ['America/Detroit', '2026-03-02', 167],
  ['America/Detroit', '2026-10-26', 169],
  ['Europe/London', '2026-03-23', 167],
  ['Europe/London', '2026-10-19', 169],
  ['Australia/Lord_Howe', '2026-03-30', 168.5],
  ['Australia/Lord_Howe', '2026-09-28', 167.5],
  ['America/Phoenix', '2026-03-02', 168],
  ['Asia/Kolkata', '2026-10-26', 168],
])('C: in %s the week of %s is %d hours', (zone, day, hours) => {
  expect(hoursOfWeek(zone, day)).toBe(hours);
});

test.each([
  ['America/Detroit', '2026-03-08', '2026-03-08T07:00:00Z', 23],
  ['America/Detroit', '2026-11-01', '2026-11-01T06:00:00Z', 25],
  ['Europe/London', '2026-03-29', '2026-03-29T01:00:00Z', 23],
  ['Australia/Sydney', '2026-04-05', '2026-04-04T16:00:00Z', 25],
  ['America/St_Johns', '2026-03-08', '2026-03-08T05:30:00Z', 23],
])('C: in %s the clocks change on %s at %s, within a workday of %d hours', (zone, day, transition, hours) => {
  const calendar = new WorkCalendar({ timeZone: zone, startsOn: 'sunday', startsAt: '00:00' }, new Date(transition), new Date(transition), 'days');
  const at = calendar.starts.findIndex((_, place) => calendar.dayAt(place) === day);
  const [begins, ends] = [calendar.starts[at] ?? 0, calendar.starts[at + 1] ?? 0];
  expect((ends - begins) / 3_600_000).toBe(hours);
  expect(Date.parse(transition)).toBeGreaterThan(begins);
  expect(Date.parse(transition)).toBeLessThan(ends);
});

test('C: a week may begin in the middle of a day: Wednesday at 06:00 in Detroit is 11:00 in winter by UTC', () => {
  const week = weekOf({ timeZone: 'America/Detroit', startsOn: 'wednesday', startsAt: '06:00' }, '2026-01-09');
  expect([week.firstDay, week.lastDay, week.startsAt.toISOString(), week.endsAt.toISOString()]).toEqual(['2026-01-07', '2026-01-13', '2026-01-07T11:00:00.000Z', '2026-01-14T11:00:00.000Z']);
});
