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

/** The workweek that an instant lies in. */
export function weekOfInstant(anchor: WeekAnchor, instant: Date): WorkWeek {
  return weekOf(anchor, workdayOf(anchor, instant));
}

/** @param day YYYY-MM-DD */
export function dayAfter(day: string): string {
  return Temporal.PlainDate.from(day).add({ days: 1 }).toString();
}

/** The day that the workday of an instant begins on: YYYY-MM-DD. */
export function workdayOf(anchor: WeekAnchor, instant: Date): string {
  const local = Temporal.Instant.fromEpochMilliseconds(instant.getTime()).toZonedDateTimeISO(anchor.timeZone).toPlainDate();
  return (startOf(anchor, local) <= instant.getTime() ? local : local.subtract({ days: 1 })).toString();
}

/** The weeks of some stretches of time, found once, so that many entries are cut without a calendar. */
export class WorkCalendar {
  /** Instants in milliseconds at which work is cut, and then the one at which the last week ends. */
  readonly starts: readonly number[];
  private readonly first: Temporal.PlainDate;
  /** The day that each stretch begins on. */
  private readonly names: readonly string[];
  /** How many days after the first one each stretch begins. */
  private readonly offsets: readonly number[];
  /** Many people have the same weeks, and calendars take their time. */
  private readonly weeks = new Map<number, WorkWeek>();

  /**
   * @param spans one or more; of what lies between them no day is looked up, so hours a century apart cost no more
   * @param cut `days` where it matters on which day of a week work was; `weeks` else, which many years of them need
   * @param alsoAt days, YYYY-MM-DD, at which work is cut as well
   */
  constructor(
    private readonly anchor: WeekAnchor,
    spans: readonly { readonly from: Date; readonly until: Date }[],
    cut: 'days' | 'weeks',
    alsoAt: readonly string[] = [],
  ) {
    const firstDay = (instant: Date): Temporal.PlainDate => firstDayOf(anchor, Temporal.PlainDate.from(workdayOf(anchor, instant)));
    const [earliest] = [...spans].sort((a, b) => a.from.getTime() - b.from.getTime());
    this.first = firstDay(earliest?.from ?? new Date(NaN));
    const offsets = new Set<number>();
    for (const { from, until } of spans) {
      const end = this.first.until(firstDay(until)).days + 7;
      for (let offset = this.first.until(firstDay(from)).days; offset < end; offset += cut === 'days' ? 1 : 7) offsets.add(offset);
      offsets.add(end);
    }
    const last = Math.max(...offsets);
    for (const day of alsoAt) {
      const offset = this.first.until(day).days;
      if (offset >= 0 && offset < last) offsets.add(offset);
    }
    this.offsets = [...offsets].sort((a, b) => a - b);
    this.names = this.offsets.map((offset) => this.day(offset).toString());
    this.starts = this.offsets.map((offset) => this.startAt(offset));
  }

  /** The day that a stretch begins on: YYYY-MM-DD. */
  dayAt(place: number): string {
    return this.names[place] ?? '';
  }

  /** Which of the weeks a stretch is of. */
  weekAt(place: number): number {
    return Math.floor((this.offsets[place] ?? 0) / 7);
  }

  week(index: number): WorkWeek {
    const [first, last] = [index * 7, index * 7 + 6];
    const known = this.weeks.get(index) ?? { firstDay: this.day(first).toString(), lastDay: this.day(last).toString(), startsAt: new Date(this.startAt(first)), endsAt: new Date(this.startAt(last + 1)) };
    this.weeks.set(index, known);
    return known;
  }

  private day(offset: number): Temporal.PlainDate {
    return this.first.add({ days: offset });
  }

  private startAt(offset: number): number {
    return startOf(this.anchor, this.day(offset));
  }
}

function firstDayOf({ startsOn }: WeekAnchor, day: Temporal.PlainDate): Temporal.PlainDate {
  return day.subtract({ days: (day.dayOfWeek - 1 - WEEKDAYS.indexOf(startsOn) + 7) % 7 });
}

/** A time that the clocks skip begins after the gap; one that comes twice, the first time. */
function startOf({ timeZone, startsAt }: WeekAnchor, day: Temporal.PlainDate): number {
  return day.toZonedDateTime({ timeZone, plainTime: startsAt }).epochMilliseconds;
}
