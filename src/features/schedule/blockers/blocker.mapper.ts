import { invalidInput } from '../../../platform/http/problems.js';
import { LOCATE_CAUTION } from './blocked-because.js';
import type { BlockerEntity } from './blocker.entity.js';
import type { BlockerBody, BlockerView } from './blockers.dto.js';

export function toBlockerView(row: BlockerEntity): BlockerView {
  const { id, jobId, kind, requestedOn, clearOn, clearedOn, validUntil, reference, note } = row;
  return {
    id, jobId, kind, requestedOn, clearOn, clearedOn, validUntil, reference, note,
    caution: kind === 'utility-locate' ? LOCATE_CAUTION : null,
    withdrawnAt: row.withdrawnAt?.toISOString() ?? null,
    createdAt: row.createdAt.toISOString(),
  };
}

/** The blocker as the request that would make it: what a patch is merged into. */
export function toBlockerBody(row: BlockerEntity): BlockerBody {
  const { jobId, kind, requestedOn, clearOn, clearedOn, validUntil, reference, note } = row;
  return { jobId, kind, requestedOn, clearOn, clearedOn, validUntil, reference, note };
}

type BlockerRow = Pick<BlockerEntity, 'jobId' | 'kind' | 'requestedOn' | 'clearOn' | 'clearedOn' | 'validUntil' | 'reference' | 'note'>;

/** @throws Problem 400 when a day comes before one that it must follow */
export function toBlockerRow(body: BlockerBody): BlockerRow {
  const requestedOn = body.requestedOn ?? null;
  const clearOn = body.clearOn ?? null;
  const clearedOn = body.clearedOn ?? null;
  const validUntil = body.validUntil ?? null;
  requireInOrder(requestedOn, clearOn, '/clearOn', 'it was asked for');
  requireInOrder(requestedOn, clearedOn, '/clearedOn', 'it was asked for');
  requireInOrder(clearedOn, validUntil, '/validUntil', 'it was out of the way');
  return { jobId: body.jobId, kind: body.kind, requestedOn, clearOn, clearedOn, validUntil, reference: body.reference ?? null, note: body.note ?? null };
}

function requireInOrder(first: string | null, then: string | null, pointer: string, what: string): void {
  if (first !== null && then !== null && then < first) throw invalidInput([{ pointer, detail: `must not be before ${first}, the day ${what}` }]);
}
