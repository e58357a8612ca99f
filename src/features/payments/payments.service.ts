import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { Clock } from '../../platform/clock/clock.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import type { Page } from '../../platform/http/lists.js';
import { type Made, ResourceStore } from '../../platform/resources/resource-store.js';
import { InvoicesService } from '../invoices/index.js';
import { PaymentEntity } from './payment.entity.js';
import { toPaymentRow } from './payment.mapper.js';
import type { PaymentBody, PaymentsQuery } from './payments.dto.js';

/** Books payments. The invoice is always locked first, and its balance changes in the same transaction. */
@Injectable()
export class PaymentsService {
  private readonly store: ResourceStore<PaymentEntity>;

  constructor(
    private readonly db: TenantDatabase,
    private readonly clock: Clock,
    private readonly invoices: InvoicesService,
  ) {
    this.store = new ResourceStore(db, PaymentEntity, 'payment');
  }

  /**
   * The same payment sent twice, even at once, is counted once.
   * @throws Problem 400 for another currency, 409 when the invoice takes no payment, 422 when there is no such
   *   invoice or the amount is more than its balance
   */
  create(actor: Actor, body: PaymentBody): Promise<Made<PaymentEntity>> {
    return this.db.write(actor, async () => {
      const invoice = await this.invoices.lockForPayment(actor, body.invoiceId);
      const made = await this.store.create(actor, body, toPaymentRow(body));
      // A refusal takes the row back with it.
      if (made.created) await this.invoices.applyPayment(actor, invoice, body.amount);
      return made;
    });
  }

  find(actor: Actor, id: string): Promise<PaymentEntity> {
    return this.store.find(actor, id);
  }

  list(actor: Actor, query: PaymentsQuery): Promise<Page<PaymentEntity>> {
    return this.store.list(actor, query, { invoiceId: query.invoiceId });
  }

  /** Repeated, it answers with the payment as it stands, and the first reason holds. @throws Problem 404 */
  void(actor: Actor, id: string, reason: string): Promise<PaymentEntity> {
    return this.db.write(actor, async () => {
      const { invoiceId } = await this.store.find(actor, id);
      const invoice = await this.invoices.lockForPayment(actor, invoiceId);
      const payment = await this.store.find(actor, id);
      if (payment.voidedAt !== null) return payment;
      await this.invoices.takePaymentBack(actor, invoice, payment.amount);
      return this.store.update(actor, id, payment.version, { voidedAt: this.clock.now(), voidReason: reason });
    });
  }
}
