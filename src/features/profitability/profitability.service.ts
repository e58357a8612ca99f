import { Injectable } from '@nestjs/common';
import { type Decimal, sumDecimals } from '../../domain/decimal.js';
import { compareHours, type HoursComparison, margin, marginPercent } from '../../domain/statistics/index.js';
import type { Actor } from '../../platform/auth/actor.js';
import { CostsService, type SpentByKind } from '../costs/index.js';
import { InvoicesService } from '../invoices/index.js';
import { JobsService } from '../jobs/index.js';
import { WorkWeeksService } from '../work-weeks/index.js';

/** Amounts are in `currency` and whole minor units, except the percentage, which is not rounded. */
export interface Profitability {
  readonly currency: string;
  readonly contract: Decimal;
  readonly invoiced: Decimal;
  readonly received: Decimal;
  readonly labor: Decimal;
  readonly spent: SpentByKind;
  readonly cost: Decimal;
  readonly margin: Decimal;
  readonly marginPercent: Decimal | null;
  readonly hours: HoursComparison;
}

/** Puts together what the other slices know of a job: at most eleven statements, however many hours and bills it has. */
@Injectable()
export class ProfitabilityService {
  constructor(
    private readonly jobs: JobsService,
    private readonly workWeeks: WorkWeeksService,
    private readonly costs: CostsService,
    private readonly invoices: InvoicesService,
  ) {}

  /** @throws Problem 404 */
  async ofJob(actor: Actor, jobId: string): Promise<Profitability> {
    const job = await this.jobs.find(actor, jobId);
    const plan = await this.jobs.planOf(actor, jobId);
    const done = await this.workWeeks.laborOfJob(actor, jobId);
    const spent = await this.costs.spentOnJob(actor, jobId);
    const { invoicedNet, received } = await this.invoices.figuresOfJob(actor, jobId);
    const labor = sumDecimals(done.map((code) => code.cost));
    const cost = sumDecimals([labor, ...Object.values(spent)]);
    return {
      currency: job.currency,
      contract: job.contractTotal,
      invoiced: invoicedNet,
      received,
      labor,
      spent,
      cost,
      margin: margin(job.contractTotal, cost),
      marginPercent: marginPercent(job.contractTotal, cost),
      hours: compareHours(plan.filter((work) => work.hours.gt(0)), done),
    };
  }
}
