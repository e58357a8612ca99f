import { placeOf } from '../../src/domain/worktime/week/index.js';
import { mergeSpans } from '../../src/features/work-weeks/merge-spans.js';
import { WorkCalendar, weekOf } from '../../src/features/work-weeks/work-calendar.js';

const anchor = { timeZone: 'America/Detroit', startsOn: 'monday', startsAt: '06:00' } as const;
const span = (from: string, until: string) => ({ from: new Date(from), until: new Date(until) });

test('looks up no day between spans that are a century apart, and knows the weeks of both', () => {
  const calendar = new WorkCalendar(anchor, [span('2026-03-10T12:00Z', '2026-03-20T12:00Z'), span('1926-03-10T12:00Z', '1926-03-10T12:00Z')], 'days');
  expect(calendar.starts).toHaveLength(7 + 1 + 14 + 1);
  for (const day of ['1926-03-10', '2026-03-09', '2026-03-20']) {
    const week = weekOf(anchor, day);
    const place = placeOf(calendar.starts, week.startsAt.getTime());
    expect(calendar.week(calendar.weekAt(place))).toEqual(week);
    expect([calendar.starts[place], calendar.dayAt(place)]).toEqual([week.startsAt.getTime(), week.firstDay]);
  }
});

test('cuts by weeks, and also at the days that it is told', () => {
  const calendar = new WorkCalendar(anchor, [span('2026-03-10T12:00Z', '2026-03-20T12:00Z')], 'weeks', ['2026-03-12', '2026-03-16', '2025-01-01', '2027-01-01']);
  expect(calendar.starts.map((_, place) => calendar.dayAt(place))).toEqual(['2026-03-09', '2026-03-12', '2026-03-16', '2026-03-23']);
  expect(calendar.starts.map((_, place) => calendar.weekAt(place))).toEqual([0, 0, 1, 2]);
});

test('makes one span of those of a person that touch or lie within each other', () => {
  const of = (personId: string, from: number, until: number) => ({ personId, from: new Date(from), until: new Date(until) });
  expect(mergeSpans([of('b', 5, 9), of('a', 7, 8), of('a', 1, 6), of('a', 6, 7), of('a', 2, 3), of('b', 1, 4)])).toEqual([of('a', 1, 8), of('b', 1, 4), of('b', 5, 9)]);
});
