import { Injectable } from '@nestjs/common';
import { Decimal } from '../../domain/decimal.js';
import { formatMoney } from '../../domain/money/index.js';
import { type CostBody, CostsService } from '../costs/index.js';
import { QuotesService } from '../quotes/index.js';
import { COMPANY } from './content/company.js';
import type { DemoPurchase } from './content/job.js';
import { JOBS } from './content/jobs.js';
import type { Scene } from './scene.js';

const SUPPLIERS = ['Tollmarsh Supply Yard', 'Greyfen Stone and Pond', 'Bramblewick Nursery'];
/** What suppliers charged for each dollar planned, in turn. */
const CHARGED = ['1.00', '0.97', '1.04', '1.01', '0.99'];

/** What was bought for the jobs: the parts of the quote, code by code, and what came on top. */
@Injectable()
export class SeedCosts {
  constructor(
    private readonly quotes: QuotesService,
    private readonly costs: CostsService,
  ) {}

  async execute(scene: Scene): Promise<void> {
    for (const { quote, work, purchases = [] } of JOBS) {
      if (work === undefined) continue;
      const parts = await this.partsOf(scene, quote, work.startedDaysAgo);
      for (const [index, purchase] of [...parts, ...purchases].entries()) await this.enter(scene, quote, index, purchase);
    }
  }

  /** One delivery for each cost code that the accepted quote has parts for. */
  private async partsOf(scene: Scene, quote: string, daysAgo: number): Promise<DemoPurchase[]> {
    const { lines } = await this.quotes.findAccepted(scene.service, scene.id(`quote ${quote}`));
    const planned = new Map<string, Decimal>();
    for (const { kind, costCode, cost } of lines) {
      if (kind === 'part') planned.set(costCode, (planned.get(costCode) ?? new Decimal(0)).plus(cost));
    }
    return [...planned].map(([costCode, cost], index) => ({
      kind: 'material', costCode, daysAgo,
      description: `Parts for ${costCode}`,
      amount: formatMoney(cost.times(CHARGED[(index + daysAgo) % CHARGED.length] ?? '1').toDecimalPlaces(2, Decimal.ROUND_HALF_UP), COMPANY.currency).amount,
      supplier: SUPPLIERS[(index + daysAgo) % SUPPLIERS.length] ?? null,
      reference: `Delivery ${daysAgo * 10 + index + 6000}`,
    }));
  }

  private async enter(scene: Scene, quote: string, index: number, { daysAgo, amount, ...rest }: DemoPurchase): Promise<void> {
    const moment = scene.calendar.moment(daysAgo, '18:00');
    const body: CostBody = {
      ...rest,
      id: scene.newId(`cost ${quote} ${index}`, moment),
      jobId: scene.id(`job ${quote}`),
      amount: { amount, currency: COMPANY.currency },
      incurredOn: scene.calendar.workday(daysAgo),
    };
    await scene.on(moment, () => this.costs.create(scene.as('owner'), body));
  }
}
