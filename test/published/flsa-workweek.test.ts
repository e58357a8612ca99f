// 29 CFR 778.105 (V): a workweek is a fixed and regularly recurring period of 168 hours that need not be the calendar
// week. A local week is 167 or 169 hours when the clocks change; it is anchored to a local weekday and hour (P, our
// choice). Transitions: IANA tz database (2025c), C: computed from it, confirmed with Python's zoneinfo.
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
  ['America/Detroit', '2027-03-08', 167],
  ['America/Detroit', '2027-11-01', 169],
  ['Europe/London', '2027-03-22', 167],
  ['Europe/London', '2027-10-25', 169],
  ['Europe/Berlin', '2027-03-22', 167],
  // The 30th of December 2011 was left out there.
  ['Pacific/Apia', '2011-12-26', 144],
])('C: in %s the week of %s is %d hours', (zone, day, hours) => {
  expect(hoursOfWeek(zone, day)).toBe(hours);
});

test.each(['America/Phoenix', 'Asia/Kolkata'])('C: in %s every week of 2026 and 2027 is 168 hours', (zone) => {
  const calendar = new WorkCalendar({ timeZone: zone, startsOn: 'monday', startsAt: '00:00' }, [{ from: new Date('2026-01-01T12:00Z'), until: new Date('2027-12-31T12:00Z') }], 'weeks');
  expect(calendar.starts).toHaveLength(106);
  expect(new Set(calendar.starts.slice(1).map((ends, place) => (ends - (calendar.starts[place] ?? 0)) / 3_600_000))).toEqual(new Set([168]));
});

test.each([
  ['America/Detroit', '2026-03-08', '2026-03-08T07:00:00Z', 23],
  ['America/Detroit', '2026-11-01', '2026-11-01T06:00:00Z', 25],
  ['America/Detroit', '2027-03-14', '2027-03-14T07:00:00Z', 23],
  ['America/Detroit', '2027-11-07', '2027-11-07T06:00:00Z', 25],
  ['Europe/London', '2026-03-29', '2026-03-29T01:00:00Z', 23],
  ['Europe/London', '2026-10-25', '2026-10-25T01:00:00Z', 25],
  ['Europe/London', '2027-03-28', '2027-03-28T01:00:00Z', 23],
  ['Europe/London', '2027-10-31', '2027-10-31T01:00:00Z', 25],
  ['Europe/Berlin', '2026-03-29', '2026-03-29T01:00:00Z', 23],
  ['Europe/Berlin', '2026-10-25', '2026-10-25T01:00:00Z', 25],
  ['Europe/Berlin', '2027-03-28', '2027-03-28T01:00:00Z', 23],
  ['Europe/Berlin', '2027-10-31', '2027-10-31T01:00:00Z', 25],
  ['Australia/Sydney', '2026-04-05', '2026-04-04T16:00:00Z', 25],
  ['Australia/Sydney', '2026-10-04', '2026-10-03T16:00:00Z', 23],
  ['Australia/Lord_Howe', '2026-04-05', '2026-04-04T15:00:00Z', 24.5],
  ['Australia/Lord_Howe', '2026-10-04', '2026-10-03T15:30:00Z', 23.5],
  ['America/St_Johns', '2026-03-08', '2026-03-08T05:30:00Z', 23],
  ['America/St_Johns', '2026-11-01', '2026-11-01T04:30:00Z', 25],
])('C: in %s the clocks change on %s at %s, within a workday of %d hours', (zone, day, transition, hours) => {
  const calendar = new WorkCalendar({ timeZone: zone, startsOn: 'sunday', startsAt: '00:00' }, [{ from: new Date(transition), until: new Date(transition) }], 'days');
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
