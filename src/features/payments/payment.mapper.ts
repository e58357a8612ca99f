import { Decimal } from '../../domain/decimal.js';
import { toMoneyBody } from '../../platform/http/fields/index.js';
import type { PaymentEntity } from './payment.entity.js';
import type { PaymentBody, PaymentView } from './payments.dto.js';

export function toPaymentView({ id, invoiceId, amount, currency, receivedOn, method, reference, voidedAt, voidReason, createdAt }: PaymentEntity): PaymentView {
  return {
    id, invoiceId,
    amount: toMoneyBody(amount, currency),
    receivedOn, method, reference,
    voidedAt: voidedAt?.toISOString() ?? null,
    voidReason,
    createdAt: createdAt.toISOString(),
  };
}

export function toPaymentRow({ invoiceId, amount, receivedOn, method, reference }: PaymentBody): Pick<PaymentEntity, 'invoiceId' | 'amount' | 'currency' | 'receivedOn' | 'method' | 'reference'> {
  return { invoiceId, amount: new Decimal(amount.amount), currency: amount.currency, receivedOn, method, reference: reference ?? null };
}
