import { type Actor, seesMoney } from '../../platform/auth/actor.js';
import { toMoneyBody } from '../../platform/http/fields/index.js';
import { costCodesOf } from './cost-codes.js';
import type { JobEntity } from './job.entity.js';
import type { JobPlanEntity } from './job-plan.entity.js';
import type { JobView } from './jobs.dto.js';

export function toJobView(actor: Actor, row: JobEntity, plan: readonly JobPlanEntity[]): JobView {
  const view: JobView = {
    id: row.id,
    number: row.number,
    state: row.state,
    title: row.title,
    quoteId: row.quoteId,
    quoteRevision: row.quoteRevision,
    customerId: row.customerId,
    siteId: row.siteId,
    featureId: row.featureId,
    timeZone: row.timeZone,
    plannedHours: plan.filter((work) => work.hours.gt(0)).map(({ costCode, hours }) => ({ costCode, hours: hours.toFixed() })),
    costCodes: costCodesOf(plan.map((work) => work.costCode)),
    startedOn: row.startedOn,
    finishedOn: row.finishedOn,
    cancelledOn: row.cancelledOn,
    cancelReason: row.cancelReason,
    createdAt: row.createdAt.toISOString(),
  };
  if (!seesMoney(actor)) return view;
  return { ...view, contractTotal: toMoneyBody(row.contractTotal, row.currency), contractTax: toMoneyBody(row.contractTax, row.currency) };
}
