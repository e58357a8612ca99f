import { laborCost } from '../../domain/worktime/index.js';
import { toMoney } from '../../domain/money/index.js';
import { entryWarnings } from './entry-warnings.js';
import type { TimeEntryBody, TimeEntryView } from './time-entries.dto.js';
import type { TimeEntryEntity } from './time-entry.entity.js';
import { paidMinutesOf } from './worked-time.js';

/** @param currency that of wages, for those who see money; null for everybody else */
export function toTimeEntryView(row: TimeEntryEntity, currency: string | null): TimeEntryView {
  const minutes = paidMinutesOf(row);
  const view: TimeEntryView = {
    id: row.id,
    jobId: row.jobId,
    personId: row.personId,
    costCode: row.costCode,
    startedAt: row.startedAt.toISOString(),
    endedAt: row.endedAt?.toISOString() ?? null,
    kind: row.kind,
    unpaidBreakMinutes: row.unpaidBreakMinutes,
    breaks: row.breaks,
    paidMinutes: minutes?.toDecimalPlaces(4).toFixed() ?? null,
    note: row.note,
    recordedBy: row.recordedBy,
    recordedAt: row.recordedAt?.toISOString() ?? null,
    receivedAt: row.receivedAt.toISOString(),
    clockSkewSeconds: row.clockSkewSeconds?.toFixed() ?? null,
    held: row.held,
    heldBecause: row.heldBecause,
    approvedAt: row.approvedAt?.toISOString() ?? null,
    approvedBy: row.approvedBy,
    voidedAt: row.voidedAt?.toISOString() ?? null,
    voidReason: row.voidReason,
    createdAt: row.createdAt.toISOString(),
    warnings: entryWarnings(row),
  };
  return currency === null || minutes === null ? view : { ...view, laborCost: toMoney(laborCost(minutes, row.hourlyWage, row.burdenPercent), currency) };
}

/** The entry as the request that would make it: what a patch is merged into. */
export function toTimeEntryBody(row: TimeEntryEntity): TimeEntryBody {
  const { jobId, personId, costCode, kind, unpaidBreakMinutes, breaks, note } = row;
  return { jobId, personId, costCode, startedAt: row.startedAt.toISOString(), endedAt: row.endedAt?.toISOString() ?? null, kind, unpaidBreakMinutes, breaks: [...breaks], note };
}
