import { Temporal } from 'temporal-polyfill';

const WEEK = /^(\d{4})-W(\d{2})$/;

export interface Week {
  /** YYYY-Www */
  readonly week: string;
  /** Its Monday and its Sunday, YYYY-MM-DD. */
  readonly firstDay: string;
  readonly lastDay: string;
}

/** The week of ISO 8601 that a day is in: from Monday to Sunday, and of the year in which its Thursday is. */
export function weekOf(day: string): Week {
  const date = Temporal.PlainDate.from(day);
  const monday = date.subtract({ days: date.dayOfWeek - 1 });
  const week = `${String(date.yearOfWeek).padStart(4, '0')}-W${String(date.weekOfYear).padStart(2, '0')}`;
  return { week, firstDay: monday.toString(), lastDay: monday.add({ days: 6 }).toString() };
}

/** The week by its name, or null for what is none, such as the 53rd of a year that has 52. */
export function parseWeek(text: string): Week | null {
  const [, year, number] = WEEK.exec(text) ?? [];
  if (year === undefined || number === undefined || year < '1900' || year > '2200') return null;
  // The 4th of January is in the first week of every year.
  const day = Temporal.PlainDate.from(`${year}-01-04`).add({ weeks: Number(number) - 1 }).toString();
  const found = weekOf(day);
  return found.week === text ? found : null;
}
