import type { Decimal } from '../../domain/decimal.js';
import { type EarnedBefore, type OvertimeThresholds, shareOut, weekLabor, type WeekLabor, type WorkPiece } from '../../domain/worktime/week/index.js';
import type { BurdenRateEntity } from './burden/burden-rate.entity.js';
import { byPersonAndWeek } from './by-person-and-week.js';
import type { Terms } from './terms.js';
import type { WorkCalendar, WorkWeek } from './work-calendar.js';
import type { YearsToDate } from './years-to-date.js';

/** A person's workweek: what it comes to, and what each piece of it carries. */
export interface PersonWeek<P extends WorkPiece = WorkPiece> {
  readonly personId: string;
  readonly week: WorkWeek;
  readonly thresholds: OvertimeThresholds;
  readonly rates: readonly BurdenRateEntity[];
  readonly before: EarnedBefore;
  readonly pieces: readonly P[];
  readonly labor: WeekLabor;
  /** One a piece, whole minor units; their sum is the week's total. */
  readonly shares: readonly Decimal[];
}

/** Work within one week of the calendar that cut it. */
export type PlacedPiece = WorkPiece & { readonly personId: string; readonly place: number };

/**
 * The weeks of work, in the order in which people and weeks come up.
 * @param work complete for each of its weeks and people
 * @param levels by which a week's total is handed out, from the widest down
 */
export function personWeeks<P extends PlacedPiece>(work: readonly P[], calendar: WorkCalendar, terms: Terms, earned: YearsToDate, levels: readonly ((piece: P) => string)[]): PersonWeek<P>[] {
  return [...byPersonAndWeek(work, calendar)].flatMap(([personId, weeks]) =>
    [...weeks].map(([index, pieces]) => {
      const week = calendar.week(index);
      const [thresholds, rates, before] = [terms.thresholdsOf(week), terms.burdenOf(week), earned.before(personId, week)];
      const labor = weekLabor(pieces, { currency: terms.currency, thresholds, burden: rates, before });
      return { personId, week, thresholds, rates, before, pieces, labor, shares: shareOut(labor.total, pieces, labor.weights, levels, terms.currency) };
    }),
  );
}
