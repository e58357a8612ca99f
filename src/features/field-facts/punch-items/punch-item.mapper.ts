import type { PunchItemBody, PunchItemView } from './punch-item.dto.js';
import type { PunchItemEntity } from './punch-item.entity.js';

export function toPunchItemView(row: PunchItemEntity): PunchItemView {
  const { id, jobId, featureId, description, place, state, recordedBy, doneBy } = row;
  return { id, jobId, featureId, description, place, state, recordedBy, doneAt: row.doneAt?.toISOString() ?? null, doneBy, createdAt: row.createdAt.toISOString() };
}

/** The item as the request that would make it: what a patch is merged into. */
export function toPunchItemBody({ jobId, featureId, description, place, state }: PunchItemEntity): PunchItemBody {
  return { jobId, featureId, description, place, state };
}
