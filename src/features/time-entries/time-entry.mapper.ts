import { laborCost, paidMinutes } from '../../domain/worktime/index.js';
import { toMoney } from '../../domain/money/index.js';
import type { TimeEntryBody, TimeEntryView } from './time-entries.dto.js';
import type { TimeEntryEntity } from './time-entry.entity.js';

/** @param currency that of wages, for those who see money; null for everybody else */
export function toTimeEntryView(row: TimeEntryEntity, currency: string | null): TimeEntryView {
  const minutes = paidMinutes(row);
  const view: TimeEntryView = {
    id: row.id,
    jobId: row.jobId,
    personId: row.personId,
    costCode: row.costCode,
    startedAt: row.startedAt.toISOString(),
    endedAt: row.endedAt.toISOString(),
    unpaidBreakMinutes: row.unpaidBreakMinutes,
    paidMinutes: minutes.toDecimalPlaces(4).toFixed(),
    note: row.note,
    recordedBy: row.recordedBy,
    voidedAt: row.voidedAt?.toISOString() ?? null,
    voidReason: row.voidReason,
    createdAt: row.createdAt.toISOString(),
  };
  return currency === null ? view : { ...view, laborCost: toMoney(laborCost(minutes, row.hourlyWage, row.burdenPercent), currency) };
}

/** The entry as the request that would make it: what a patch is merged into. */
export function toTimeEntryBody(row: TimeEntryEntity): TimeEntryBody {
  const { jobId, personId, costCode, unpaidBreakMinutes, note } = row;
  return { jobId, personId, costCode, startedAt: row.startedAt.toISOString(), endedAt: row.endedAt.toISOString(), unpaidBreakMinutes, note };
}
