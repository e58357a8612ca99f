import { Injectable } from '@nestjs/common';
import type { Decimal } from '../../domain/decimal.js';
import { formatMoney } from '../../domain/money/index.js';
import type { Actor } from '../../platform/auth/actor.js';
import type { MoneyBody } from '../../platform/http/fields/index.js';
import { invalidInput, notPossible, stateConflict } from '../../platform/http/problems.js';
import type { InvoiceEntity, InvoiceState } from './invoice.entity.js';
import { InvoicesRepository } from './invoices.repository.js';

/**
 * What is paid of an invoice. Whoever calls holds the invoice locked, so that two payments at once can't both take
 * the same balance.
 */
@Injectable()
export class InvoiceBalance {
  constructor(private readonly invoices: InvoicesRepository) {}

  /**
   * @throws Problem 400 for another currency, 409 when the invoice takes no payment, 422 for more than is owed; the
   *   pointers are those of the payment's `amount`
   */
  async receive(actor: Actor, invoice: InvoiceEntity, { amount, currency }: MoneyBody): Promise<void> {
    if (currency !== invoice.currency) throw invalidInput([{ pointer: '/amount/currency', detail: `must be ${invoice.currency}, the currency of the invoice` }]);
    if (invoice.state !== 'issued' && invoice.state !== 'part-paid') throw stateConflict(whyNotPayable(invoice), [{ pointer: '/invoiceId', detail: `is an invoice that is ${invoice.state}` }]);
    const balance = invoice.grossTotal.minus(invoice.paidTotal);
    if (balance.lt(amount)) {
      const owed = `${formatMoney(balance, currency).amount} ${currency}`;
      throw notPossible(`The payment is more than the balance of ${owed}. Enter at most that, and what was paid too much elsewhere.`, [{ pointer: '/amount/amount', detail: `must be at most the balance of ${owed}` }]);
    }
    await this.setPaid(actor, invoice, invoice.paidTotal.plus(amount));
  }

  /** Takes a payment back that was received before. */
  async giveBack(actor: Actor, invoice: InvoiceEntity, amount: Decimal): Promise<void> {
    await this.setPaid(actor, invoice, invoice.paidTotal.minus(amount));
  }

  private async setPaid(actor: Actor, invoice: InvoiceEntity, paidTotal: Decimal): Promise<void> {
    await this.invoices.writeLocked(actor, invoice, { paidTotal, state: stateWhenPaid(paidTotal, invoice.grossTotal) });
  }
}

/** The state of an issued invoice by what was paid of it. One over nothing is paid from the start. */
export function stateWhenPaid(paidTotal: Decimal, grossTotal: Decimal): InvoiceState {
  if (paidTotal.eq(grossTotal)) return 'paid';
  return paidTotal.isZero() ? 'issued' : 'part-paid';
}

function whyNotPayable({ state, number }: InvoiceEntity): string {
  if (state === 'draft') return 'The invoice is a draft. Issue it first; then it takes payments.';
  if (state === 'paid') return `Invoice ${number} is paid already; nothing is owed on it.`;
  return 'The invoice is void, and nothing is owed on it. Enter the payment for the invoice that took its place.';
}
