import { Injectable } from '@nestjs/common';
import { Decimal } from '../../domain/decimal.js';
import { formatMoney } from '../../domain/money/index.js';
import { DraftInvoice, InvoicesService, IssueInvoice } from '../invoices/index.js';
import { PaymentsService } from '../payments/index.js';
import type { DemoBill, DemoPayment } from './content/job.js';
import { JOBS } from './content/jobs.js';
import type { Scene } from './scene.js';

/** The invoices in the order of their days, so that their numbers follow, and what came in for them. */
@Injectable()
export class SeedBills {
  constructor(
    private readonly draftInvoice: DraftInvoice,
    private readonly issueInvoice: IssueInvoice,
    private readonly invoices: InvoicesService,
    private readonly payments: PaymentsService,
  ) {}

  async execute(scene: Scene): Promise<void> {
    const billed = JOBS.flatMap(({ quote, bill }) => (bill === undefined ? [] : [{ quote, bill }]));
    for (const { quote, bill } of billed.sort((a, b) => b.bill.issuedDaysAgo - a.bill.issuedDaysAgo)) await this.bill(scene, quote, bill);
  }

  private async bill(scene: Scene, quote: string, { issuedDaysAgo, payments }: DemoBill): Promise<void> {
    const owner = scene.as('owner');
    const moment = scene.calendar.moment(issuedDaysAgo, '17:30');
    const id = scene.newId(`invoice ${quote}`, moment);
    await scene.on(moment, async () => {
      await this.draftInvoice.execute(owner, { id, jobId: scene.id(`job ${quote}`), basis: 'final' });
      await this.issueInvoice.execute(owner, id);
    });
    for (const [index, payment] of payments.entries()) await this.receive(scene, `payment ${quote} ${index}`, id, payment);
  }

  private async receive(scene: Scene, name: string, invoiceId: string, { daysAgo, percentOfBalance, ...how }: DemoPayment): Promise<void> {
    const moment = scene.calendar.moment(daysAgo, '11:30');
    const { grossTotal, paidTotal, currency } = await this.invoices.find(scene.service, invoiceId);
    const share = grossTotal.minus(paidTotal).times(percentOfBalance).div(100).toDecimalPlaces(2, Decimal.ROUND_HALF_UP);
    await scene.on(moment, () =>
      this.payments.create(scene.as('owner'), { id: scene.newId(name, moment), invoiceId, amount: formatMoney(share, currency), receivedOn: scene.calendar.workday(daysAgo), ...how }),
    );
  }
}
