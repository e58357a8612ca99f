import { Temporal } from 'temporal-polyfill';

export const WEEKDAYS = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'] as const;
export type Weekday = (typeof WEEKDAYS)[number];

/** Where a workweek begins: a weekday and a local time in the zone of the office. */
export interface WeekAnchor {
  readonly timeZone: string;
  readonly startsOn: Weekday;
  /** hh:mm; workdays begin at it too. */
  readonly startsAt: string;
}

export interface WorkWeek {
  /** The day it begins on: YYYY-MM-DD. It names the week. */
  readonly firstDay: string;
  /** The last day that begins within it. Its rates and its calendar year are the week's. */
  readonly lastDay: string;
  readonly startsAt: Date;
  readonly endsAt: Date;
}

/** The workweek that a workday lies in. @param day YYYY-MM-DD, the day that the workday begins on */
export function weekOf(anchor: WeekAnchor, day: string): WorkWeek {
  const first = firstDayOf(anchor, Temporal.PlainDate.from(day));
  const [next, last] = [first.add({ days: 7 }), first.add({ days: 6 })];
  return { firstDay: first.toString(), lastDay: last.toString(), startsAt: new Date(startOf(anchor, first)), endsAt: new Date(startOf(anchor, next)) };
}

/** The day that the workday of an instant begins on: YYYY-MM-DD. */
export function workdayOf(anchor: WeekAnchor, instant: Date): string {
  const local = Temporal.Instant.fromEpochMilliseconds(instant.getTime()).toZonedDateTimeISO(anchor.timeZone).toPlainDate();
  return (startOf(anchor, local) <= instant.getTime() ? local : local.subtract({ days: 1 })).toString();
}

/** All workdays of the weeks from one instant to another, found once, so that many entries are cut without a calendar. */
export class WorkCalendar {
  /** Instants in milliseconds at which the days begin, and then the one at which the last one ends. */
  readonly starts: readonly number[];
  /** YYYY-MM-DD of each day. */
  readonly days: readonly string[];

  constructor(anchor: WeekAnchor, from: Date, until: Date) {
    const first = firstDayOf(anchor, Temporal.PlainDate.from(workdayOf(anchor, from)));
    const end = firstDayOf(anchor, Temporal.PlainDate.from(workdayOf(anchor, until))).add({ days: 7 });
    const days = Array.from({ length: first.until(end).days }, (_, n) => first.add({ days: n }));
    this.days = days.map(String);
    this.starts = [...days, end].map((day) => startOf(anchor, day));
  }

  /** The place of a day's week among the weeks. */
  weekAt(day: number): number {
    return Math.floor(day / 7);
  }

  week(index: number): WorkWeek {
    const [first, last] = [index * 7, index * 7 + 6];
    return { firstDay: this.days[first] ?? '', lastDay: this.days[last] ?? '', startsAt: new Date(this.starts[first] ?? NaN), endsAt: new Date(this.starts[last + 1] ?? NaN) };
  }
}

function firstDayOf({ startsOn }: WeekAnchor, day: Temporal.PlainDate): Temporal.PlainDate {
  return day.subtract({ days: (day.dayOfWeek - 1 - WEEKDAYS.indexOf(startsOn) + 7) % 7 });
}

/** A time that the clocks skip begins after the gap; one that comes twice, the first time. */
function startOf({ timeZone, startsAt }: WeekAnchor, day: Temporal.PlainDate): number {
  return day.toZonedDateTime({ timeZone, plainTime: startsAt }).epochMilliseconds;
}
