import { AsyncLocalStorage } from 'node:async_hooks';
import { Injectable } from '@nestjs/common';
import { Temporal } from 'temporal-polyfill';

const setTime = new AsyncLocalStorage<Date>();

/** The only place that reads the time, so that it can be set. */
@Injectable()
export class Clock {
  now(): Date {
    return setTime.getStore() ?? new Date();
  }

  /** Runs `work` as if it were that moment: for the demonstration's past, never in a request. */
  asOf<T>(moment: Date, work: () => Promise<T>): Promise<T> {
    return setTime.run(moment, work);
  }

  /** The calendar day at this moment in an IANA time zone, as YYYY-MM-DD. */
  today(timeZone: string): string {
    return localDate(this.now(), timeZone);
  }
}

/** The calendar day of an instant in an IANA time zone, as YYYY-MM-DD. */
export function localDate(instant: Date, timeZone: string): string {
  return Temporal.Instant.fromEpochMilliseconds(instant.getTime()).toZonedDateTimeISO(timeZone).toPlainDate().toString();
}

/** A calendar day some days later, as YYYY-MM-DD. */
export function addDays(date: string, days: number): string {
  return Temporal.PlainDate.from(date).add({ days }).toString();
}

/** Whether the name is an IANA time zone that this machine knows. */
export function isTimeZone(name: string): boolean {
  // "+02:00" is accepted by Intl but is no zone: it knows no daylight-saving time.
  if (!/^[A-Za-z]/.test(name)) return false;
  try {
    new Intl.DateTimeFormat('en-US', { timeZone: name });
    return true;
  } catch {
    return false;
  }
}
