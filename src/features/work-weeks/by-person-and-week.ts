import type { WorkCalendar } from './work-calendar.js';

/** What lies where the calendar cut it, by whose it is and by the place of its week, in the order in which they come up. */
export function byPersonAndWeek<P extends { readonly personId: string; readonly place: number }>(work: readonly P[], calendar: WorkCalendar): Map<string, Map<number, P[]>> {
  const people = new Map<string, Map<number, P[]>>();
  for (const piece of work) {
    const weeks = people.get(piece.personId) ?? new Map<number, P[]>();
    people.set(piece.personId, weeks);
    const index = calendar.weekAt(piece.place);
    const pieces = weeks.get(index);
    if (pieces === undefined) weeks.set(index, [piece]);
    else pieces.push(piece);
  }
  return people;
}
