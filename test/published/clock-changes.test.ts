// US Department of Labor, FLSA Hours Worked Advisor, "Daylight Savings Time": V, the night shift row.
// The zones: IANA tz database (2025c), C: computed here from it with temporal-polyfill, confirmed with Python's zoneinfo.
// 29 CFR 785.48(b) (V) lets punches be rounded where it averages out; we do not (C: 06:53 to 15:37 less 30 min is 8 h
// 14 min, where quarters of an hour would pay 8.00, tenths 8.20 and five minutes 8.17).
import { Temporal } from 'temporal-polyfill';
import { minutesToHours, paidMinutes } from '../../src/domain/worktime/index.js';

function paidHours(zone: string, start: string, end: string, unpaidBreakMinutes: number): number {
  const instant = (local: string) => {
    return new Date(Temporal.PlainDateTime.from(local).toZonedDateTime(zone).epochMilliseconds);
  };
  const span = { startedAt: instant(start), endedAt: instant(end), unpaidBreakMinutes };
  return minutesToHours(paidMinutes(span)).toNumber();
}

test('V: a shift from 23:00 to 07:30 with a half-hour meal is 7 hours when the clocks go forward', () => {
  expect(paidHours('America/Detroit', '2026-03-07T23:00', '2026-03-08T07:30', 30)).toBe(7);
});

test.each([
  ['America/Detroit', '2026-03-07T23:00', '2026-03-08T07:30', 7.5],
  ['America/Detroit', '2026-10-31T23:00', '2026-11-01T07:30', 9.5],
  ['America/Phoenix', '2026-03-07T23:00', '2026-03-08T07:30', 8.5],
  ['Europe/London', '2026-03-28T22:00', '2026-03-29T06:00', 7],
  ['Europe/London', '2026-10-24T22:00', '2026-10-25T06:00', 9],
  ['Australia/Lord_Howe', '2026-04-04T22:00', '2026-04-05T06:00', 8.5],
  ['Asia/Kolkata', '2026-04-04T22:00', '2026-04-05T06:00', 8],
  ['Pacific/Apia', '2011-12-29T20:00', '2011-12-31T04:00', 8],
])('C: in %s, %s to %s is %d hours', (zone, start, end, hours) => {
  expect(paidHours(zone, start, end, 0)).toBe(hours);
});

test.each([
  ['2026-03-07T23:00', '2026-03-08T07:30', 7],
  ['2026-10-31T23:00', '2026-11-01T07:30', 9],
])('C: in Detroit %s to %s with a half-hour meal is paid %d hours', (start, end, hours) => {
  expect(paidHours('America/Detroit', start, end, 30)).toBe(hours);
});

test('C: does not round punches: 06:53 to 15:37 less half an hour is 494 minutes', () => {
  expect(paidHours('America/Detroit', '2026-06-01T06:53', '2026-06-01T15:37', 30)).toBeCloseTo(494 / 60, 12);
});
