import { addDays } from '../../../platform/clock/clock.js';
import { invalidInput } from '../../../platform/http/problems.js';
import type { DayOffEntity } from './day-off.entity.js';
import type { DaysOffBody, DaysOffView } from './days-off.dto.js';

const MOST_DAYS = 366;

export function toDaysOffView(row: DayOffEntity): DaysOffView {
  const { id, personId, firstDay, lastDay, note } = row;
  return { id, personId, firstDay, lastDay, note, withdrawnAt: row.withdrawnAt?.toISOString() ?? null, createdAt: row.createdAt.toISOString() };
}

/** The days off as the request that would make them: what a patch is merged into. */
export function toDaysOffBody({ personId, firstDay, lastDay, note }: DayOffEntity): DaysOffBody {
  return { personId, firstDay, lastDay, note };
}

/** @throws Problem 400 at /lastDay when it comes before the first day or more than a year after it */
export function toDayOffRow(body: DaysOffBody): Pick<DayOffEntity, 'personId' | 'firstDay' | 'lastDay' | 'note'> {
  const { personId, firstDay, note } = body;
  const lastDay = body.lastDay ?? firstDay;
  const limit = addDays(firstDay, MOST_DAYS - 1);
  if (lastDay < firstDay || lastDay > limit) throw invalidInput([{ pointer: '/lastDay', detail: `must be from ${firstDay}, the first day, to ${limit}` }]);
  return { personId, firstDay, lastDay, note: note ?? null };
}
