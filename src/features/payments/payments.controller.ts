import { Body, Controller, Query } from '@nestjs/common';
import { type Actor, OFFICE } from '../../platform/auth/actor.js';
import { CurrentActor } from '../../platform/auth/allow.js';
import { ActionRoute, CreateRoute, ListRoute, ReadRoute } from '../../platform/http/api.js';
import { IdParam } from '../../platform/http/id-param.js';
import { mapPage, type Page } from '../../platform/http/lists.js';
import { made, type Reply, tagged } from '../../platform/http/reply.js';
import { ReasonBody } from '../jobs/index.js';
import { toPaymentView } from './payment.mapper.js';
import { PaymentBody, PaymentsQuery, PaymentView } from './payments.dto.js';
import { PaymentsService } from './payments.service.js';

@Controller('v1/payments')
export class PaymentsController {
  constructor(private readonly payments: PaymentsService) {}

  @CreateRoute(PaymentView, { roles: OFFICE, summary: 'Enter a payment', description: 'The invoice becomes `part-paid`, or `paid` when nothing is owed any more.' })
  async create(@CurrentActor() actor: Actor, @Body() body: PaymentBody): Promise<Reply<PaymentView>> {
    const { row, created } = await this.payments.create(actor, body);
    return made(toPaymentView(row), row.version, created);
  }

  @ListRoute(PaymentView, { roles: OFFICE, summary: 'List the payments' })
  async list(@CurrentActor() actor: Actor, @Query() query: PaymentsQuery): Promise<Page<PaymentView>> {
    return mapPage(await this.payments.list(actor, query), toPaymentView);
  }

  @ReadRoute(PaymentView, { roles: OFFICE, summary: 'Read a payment' })
  async read(@CurrentActor() actor: Actor, @IdParam() id: string): Promise<Reply<PaymentView>> {
    const row = await this.payments.find(actor, id);
    return tagged(toPaymentView(row), row.version);
  }

  @ActionRoute(PaymentView, { path: ':id/void', roles: OFFICE, summary: 'Void a payment', description: 'The invoice owes the amount again.' })
  async void(@CurrentActor() actor: Actor, @IdParam() id: string, @Body() body: ReasonBody): Promise<Reply<PaymentView>> {
    const row = await this.payments.void(actor, id, body.reason);
    return tagged(toPaymentView(row), row.version);
  }
}
