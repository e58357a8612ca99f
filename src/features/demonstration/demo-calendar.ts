import { Temporal } from 'temporal-polyfill';

const SATURDAY = 6;

/** Days of the demonstration, counted from the day it is made on, so that it always looks alive. */
export class DemoCalendar {
  private readonly days: Temporal.PlainDate[] = [];
  private next: Temporal.PlainDate;

  /** @param today YYYY-MM-DD in the zone */
  constructor(today: string, private readonly timeZone: string) {
    this.next = Temporal.PlainDate.from(today);
  }

  /**
   * The day some working days (Monday to Friday) ago, as YYYY-MM-DD; 0 is today, or on a weekend the Friday before. Less
   * than 0 counts ahead from there.
   */
  workday(ago: number): string {
    return this.at(ago).toString();
  }

  /** The same day some whole years before, as YYYY-MM-DD. */
  yearsBefore(day: string, years: number): string {
    return Temporal.PlainDate.from(day).subtract({ years }).toString();
  }

  /** @param time of the day in the zone, as HH:MM */
  moment(workdaysAgo: number, time: string): Date {
    const zoned = this.at(workdaysAgo).toZonedDateTime({ timeZone: this.timeZone, plainTime: Temporal.PlainTime.from(time) });
    return new Date(zoned.epochMilliseconds);
  }

  private at(ago: number): Temporal.PlainDate {
    if (ago < 0) return this.ahead(-ago);
    for (;;) {
      const day = this.days[ago];
      if (day !== undefined) return day;
      if (this.next.dayOfWeek < SATURDAY) this.days.push(this.next);
      this.next = this.next.subtract({ days: 1 });
    }
  }

  private ahead(workdays: number): Temporal.PlainDate {
    let day = this.at(0);
    for (let left = workdays; left > 0; ) {
      day = day.add({ days: 1 });
      if (day.dayOfWeek < SATURDAY) left--;
    }
    return day;
  }
}
