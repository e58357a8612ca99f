import { blockedBecause } from '../blockers/blocked-because.js';
import type { VisitEntity } from './visit.entity.js';
import type { VisitFacts } from './visit-facts.js';
import type { VisitWarningCode, VisitWarningView } from './visits.view.js';

type Concerns = Partial<Pick<VisitWarningView, 'personId' | 'visitId' | 'blockerId'>>;

/** What speaks against a visit, in the order in which somebody would mend it: the job, the site, then each person. */
export function visitWarnings(visit: Pick<VisitEntity, 'day' | 'state'>, facts: VisitFacts): VisitWarningView[] {
  if (visit.state === 'cancelled') return [];
  const nameOf = (personId: string): string => facts.people.find((person) => person.personId === personId)?.name ?? 'Somebody';
  return [
    ...(['finished', 'cancelled'].includes(facts.jobState) ? [warning('job-closed', `Job ${facts.jobNumber} is ${facts.jobState}. Reopen it, or cancel the visit.`)] : []),
    ...facts.blockers.flatMap((blocker) => {
      const why = blockedBecause(blocker, visit.day, facts.lastDay);
      return why === null ? [] : [warning('blocked', why, { blockerId: blocker.id })];
    }),
    ...facts.people.filter(({ active }) => !active).map(({ personId, name }) => warning('not-active', `${name} does not work here any more. Send somebody else.`, { personId })),
    ...facts.people
      .filter(({ active, onCrew }) => active && !onCrew)
      .map(({ personId, name }) => warning('not-on-crew', `${name} is not on the crew of job ${facts.jobNumber} any more, so their phone does not keep it. Put them on the crew again, or send somebody else.`, { personId })),
    ...facts.absences.map(({ personId, firstDay, lastDay }) => warning('day-off', `${nameOf(personId)} has ${firstDay === lastDay ? `${firstDay} off` : `days off from ${firstDay} to ${lastDay}`}.`, { personId })),
    ...facts.clashes.map(({ personId, visitId, jobNumber, day, startTime, timeZone }) =>
      warning('double-booked', `${nameOf(personId)} is also planned for job ${jobNumber}, from ${startTime} on ${day} (${timeZone}).`, { personId, visitId }),
    ),
  ];
}

function warning(code: VisitWarningCode, detail: string, concerns: Concerns = {}): VisitWarningView {
  return { code, detail, personId: null, visitId: null, blockerId: null, ...concerns };
}
