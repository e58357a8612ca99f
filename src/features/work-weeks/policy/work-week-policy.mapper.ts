import { Decimal } from '../../../domain/decimal.js';
import type { ResourceEntity } from '../../../platform/resources/resource-entity.js';
import type { WorkWeekPolicyBody, WorkWeekPolicyView } from './work-week-policies.dto.js';
import type { WorkWeekPolicyEntity } from './work-week-policy.entity.js';

export function toWorkWeekPolicyView(row: WorkWeekPolicyEntity): WorkWeekPolicyView {
  return { id: row.id, ...fields(row), createdAt: row.createdAt.toISOString() };
}

/** The policy as the request that would make it: what a patch is merged into. */
export function toWorkWeekPolicyBody(row: WorkWeekPolicyEntity): WorkWeekPolicyBody {
  return fields(row);
}

export function toWorkWeekPolicyRow({ startsOn, startsAt, weeklyOvertimeHours, dailyOvertimeHours, effectiveFrom }: WorkWeekPolicyBody): Omit<WorkWeekPolicyEntity, keyof ResourceEntity | 'madeOrder'> {
  return {
    startsOn,
    startsAt,
    weeklyOvertimeHours: new Decimal(weeklyOvertimeHours),
    dailyOvertimeHours: dailyOvertimeHours ? new Decimal(dailyOvertimeHours) : null,
    effectiveFrom,
  };
}

function fields({ startsOn, startsAt, weeklyOvertimeHours, dailyOvertimeHours, effectiveFrom }: WorkWeekPolicyEntity): Omit<WorkWeekPolicyView, 'id' | 'createdAt'> {
  return { startsOn, startsAt, weeklyOvertimeHours: weeklyOvertimeHours.toFixed(), dailyOvertimeHours: dailyOvertimeHours?.toFixed() ?? null, effectiveFrom };
}
