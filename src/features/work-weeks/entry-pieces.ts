import { cutWork } from '../../domain/worktime/week/index.js';
import type { LoggedWork } from '../time-entries/index.js';
import type { PlacedPiece } from './person-weeks.js';
import type { WorkCalendar } from './work-calendar.js';

/** The part of a time entry that lies in one workday. */
export interface EntryPiece extends PlacedPiece {
  readonly entryId: string;
}

/** What of entries lies within the calendar, cut where it is cut. */
export function entryPieces(work: readonly LoggedWork[], calendar: WorkCalendar): EntryPiece[] {
  return work.flatMap((entry) => {
    const { id: entryId, personId, jobId, costCode, hourlyWage, burdenPercent } = entry;
    return cutWork(entry, calendar.starts).map(({ place, milliseconds }) => ({ entryId, personId, jobId, costCode, place, workday: calendar.dayAt(place), milliseconds, hourlyWage, burdenPercent }));
  });
}
