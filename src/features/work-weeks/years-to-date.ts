import { type EarnedBefore, NOTHING_EARNED, yearToDate } from '../../domain/worktime/week/index.js';
import type { PaidSum } from '../time-entries/index.js';
import { byPersonAndWeek } from './by-person-and-week.js';
import type { OpeningWagesEntity } from './opening/opening-wages.entity.js';
import type { Terms } from './terms.js';
import type { WorkCalendar, WorkWeek } from './work-calendar.js';

/** What people had earned in their calendar years before weeks. */
export class YearsToDate {
  /** By person and the first day of the week. */
  private readonly known = new Map<string, EarnedBefore>();

  /** Where nothing depends on it. */
  static readonly none = new YearsToDate();

  /** @param sums complete for the calendar years that are asked for, up to the weeks that are and the days of the opening wages */
  static of(sums: readonly PaidSum[], calendar: WorkCalendar, terms: Terms, openings: readonly OpeningWagesEntity[]): YearsToDate {
    const found = new YearsToDate();
    for (const [personId, weeks] of byPersonAndWeek(sums, calendar)) {
      for (const [year, ofYear] of byYear(weeks, calendar)) {
        const opening = openings.find((one) => one.personId === personId && one.year === year) ?? null;
        const paid = ofYear.map(({ week, time }) => ({ time: time.map((sum) => ({ ...sum, workday: calendar.dayAt(sum.place) })), terms: { currency: terms.currency, thresholds: terms.thresholdsOf(week) } }));
        yearToDate(paid, opening).forEach((before, index) => found.known.set(`${personId} ${ofYear[index]?.week.firstDay ?? ''}`, before));
      }
    }
    return found;
  }

  before(personId: string, week: WorkWeek): EarnedBefore {
    return this.known.get(`${personId} ${week.firstDay}`) ?? NOTHING_EARNED;
  }
}

interface WeekOfSums {
  readonly week: WorkWeek;
  readonly time: readonly PaidSum[];
}

/** The weeks of each calendar year, which is that of a week's last day, in order. */
function byYear(weeks: ReadonlyMap<number, readonly PaidSum[]>, calendar: WorkCalendar): Map<number, WeekOfSums[]> {
  const years = new Map<number, WeekOfSums[]>();
  for (const [index, time] of [...weeks].sort(([a], [b]) => a - b)) {
    const week = calendar.week(index);
    const year = Number(week.lastDay.slice(0, 4));
    years.set(year, [...(years.get(year) ?? []), { week, time }]);
  }
  return years;
}
