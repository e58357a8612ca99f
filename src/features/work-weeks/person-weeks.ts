import { Decimal } from '../../domain/decimal.js';
import { cutByDay, type EarnedBefore, type OvertimeThresholds, shareOut, weekLabor, type WeekLabor, weekPay, type WorkPiece } from '../../domain/worktime/week/index.js';
import type { LoggedWork } from '../time-entries/index.js';
import type { BurdenRateEntity } from './burden/burden-rate.entity.js';
import type { Terms } from './terms.js';
import { WorkCalendar, type WorkWeek } from './work-calendar.js';

/** A person's workweek: what it comes to, and what each piece of it carries. */
export interface PersonWeek {
  readonly personId: string;
  readonly week: WorkWeek;
  readonly thresholds: OvertimeThresholds;
  readonly rates: readonly BurdenRateEntity[];
  readonly before: EarnedBefore;
  readonly pieces: readonly WorkPiece[];
  readonly labor: WeekLabor;
  /** One a piece, whole minor units; their sum is the week's total. */
  readonly shares: readonly Decimal[];
}

/**
 * The weeks that are wanted of the people who worked.
 * @param work of each person complete for the wanted weeks, and for the weeks of their year before them where burden
 *   has yearly caps
 */
export function personWeeks(work: readonly LoggedWork[], terms: Terms, wanted: (week: WorkWeek, pieces: readonly WorkPiece[]) => boolean): PersonWeek[] {
  if (work.length === 0) return [];
  const instants = work.flatMap(({ startedAt, endedAt }) => [startedAt.getTime(), endedAt.getTime()]);
  const edge = (pick: (a: number, b: number) => number): Date => new Date(instants.reduce(pick));
  const calendar = new WorkCalendar(terms.anchor, edge((a, b) => Math.min(a, b)), edge((a, b) => Math.max(a, b)));
  return [...byPersonAndWeek(work, calendar)].flatMap(([personId, weeks]) => ofPerson(personId, weeks, calendar, terms, wanted));
}

function ofPerson(personId: string, weeks: ReadonlyMap<number, WorkPiece[]>, calendar: WorkCalendar, terms: Terms, wanted: (week: WorkWeek, pieces: readonly WorkPiece[]) => boolean): PersonWeek[] {
  let [year, before]: [string, EarnedBefore] = ['', NOTHING];
  const found: PersonWeek[] = [];
  for (const [index, pieces] of [...weeks].sort(([a], [b]) => a - b)) {
    const week = calendar.week(index);
    const isWanted = wanted(week, pieces);
    if (!isWanted && !terms.capped) continue;
    if (week.lastDay.slice(0, 4) !== year) [year, before] = [week.lastDay.slice(0, 4), NOTHING];
    if (isWanted) found.push(worked(personId, week, pieces, terms, before));
    if (!terms.capped) continue;
    const { straightPay, premium } = weekPay(pieces, { currency: terms.currency, thresholds: terms.thresholdsOf(week) });
    before = { straightPay: before.straightPay.plus(straightPay), allPay: before.allPay.plus(straightPay).plus(premium) };
  }
  return found;
}

function worked(personId: string, week: WorkWeek, pieces: readonly WorkPiece[], terms: Terms, before: EarnedBefore): PersonWeek {
  const [thresholds, rates] = [terms.thresholdsOf(week), terms.burdenOf(week)];
  const labor = weekLabor(pieces, { currency: terms.currency, thresholds, burden: rates, before });
  const shares = shareOut(labor.total, pieces, labor.weights, [(piece) => piece.jobId, (piece) => piece.costCode, (piece) => piece.entryId], terms.currency);
  return { personId, week, thresholds, rates, before, pieces, labor, shares };
}

const NOTHING: EarnedBefore = { allPay: new Decimal(0), straightPay: new Decimal(0) };

function byPersonAndWeek(work: readonly LoggedWork[], calendar: WorkCalendar): Map<string, Map<number, WorkPiece[]>> {
  const people = new Map<string, Map<number, WorkPiece[]>>();
  for (const entry of work) {
    const weeks = people.get(entry.personId) ?? new Map<number, WorkPiece[]>();
    people.set(entry.personId, weeks);
    for (const { day, minutes } of cutByDay(entry, calendar.starts)) {
      const week = calendar.weekAt(day);
      const { id: entryId, jobId, costCode, hourlyWage, burdenPercent } = entry;
      const pieces = weeks.get(week) ?? [];
      weeks.set(week, pieces);
      pieces.push({ entryId, jobId, costCode, workday: calendar.days[day] ?? '', minutes, hourlyWage, burdenPercent });
    }
  }
  return people;
}
