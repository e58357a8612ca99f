import type { VisitEntity } from './visit.entity.js';
import type { VisitFacts } from './visit-facts.js';
import type { VisitSpan } from './visit-span.js';
import { visitWarnings } from './visit-warnings.js';
import type { VisitBody } from './visits.dto.js';
import type { PlannedVisitView, VisitView } from './visits.view.js';

export function toPlannedVisitView(row: VisitEntity, personIds: string[]): PlannedVisitView {
  const { id, jobId, day, startTime, lengthMinutes, timeZone, bring, note, state, cancelReason } = row;
  return {
    id, jobId, day, startTime, lengthMinutes, timeZone,
    startsAt: row.startsAt.toISOString(),
    endsAt: row.endsAt.toISOString(),
    personIds,
    bring, note, state, cancelReason,
    createdAt: row.createdAt.toISOString(),
    changedAt: row.changedAt.toISOString(),
  };
}

export function toVisitView(row: VisitEntity, facts: VisitFacts): VisitView {
  return { ...toPlannedVisitView(row, coming(facts)), warnings: visitWarnings(row, facts) };
}

/** The visit as the request that would make it: what a patch is merged into. */
export function toVisitBody(row: VisitEntity, facts: VisitFacts): VisitBody {
  const { jobId, day, startTime, lengthMinutes, bring, note } = row;
  return { jobId, day, startTime, lengthMinutes, personIds: coming(facts), bring, note };
}

type VisitRow = Pick<VisitEntity, 'jobId' | 'day' | 'startTime' | 'lengthMinutes' | 'timeZone' | 'bring' | 'note' | 'changedAt'> & VisitSpan;

export function toVisitRow(body: VisitBody, timeZone: string, span: VisitSpan, changedAt: Date): VisitRow {
  const { jobId, day, startTime, lengthMinutes, bring, note } = body;
  return { jobId, day, startTime, lengthMinutes, timeZone, bring: bring ?? [], note: note ?? null, changedAt, ...span };
}

function coming({ people }: VisitFacts): string[] {
  return people.map(({ personId }) => personId);
}
