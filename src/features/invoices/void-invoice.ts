import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { Clock } from '../../platform/clock/clock.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import { toMoneyBody } from '../../platform/http/fields/index.js';
import { stateConflict } from '../../platform/http/problems.js';
import type { InvoiceEntity } from './invoice.entity.js';
import { InvoicesRepository } from './invoices.repository.js';

/** Takes an invoice out of force; its number stays used, and its document is still to be had. */
@Injectable()
export class VoidInvoice {
  constructor(
    private readonly db: TenantDatabase,
    private readonly clock: Clock,
    private readonly invoices: InvoicesRepository,
  ) {}

  /** Repeated, it answers with the invoice as it stands, and the first reason holds. @throws Problem 404, or 409 when something is paid */
  execute(actor: Actor, id: string, reason: string): Promise<InvoiceEntity> {
    return this.db.write(actor, async () => {
      const invoice = await this.invoices.store.lock(actor, id);
      if (invoice.state === 'void') return invoice;
      if (!invoice.paidTotal.isZero()) {
        const { amount, currency } = toMoneyBody(invoice.paidTotal, invoice.currency);
        throw stateConflict(`Of this invoice ${amount} ${currency} is paid. Void its payments first.`);
      }
      return this.invoices.writeLocked(actor, invoice, { state: 'void', voidedAt: this.clock.now(), voidReason: reason });
    });
  }
}
