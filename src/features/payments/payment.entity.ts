import { Column, Entity } from 'typeorm';
import type { Decimal } from '../../domain/decimal.js';
import { AmountColumn, DateColumn } from '../../platform/database/columns.js';
import { ResourceEntity } from '../../platform/resources/resource-entity.js';

export const PAYMENT_METHODS = ['cash', 'check', 'card', 'bank-transfer', 'other'] as const;
export type PaymentMethod = (typeof PAYMENT_METHODS)[number];

/** Money that came in for an invoice. It is never changed and never deleted, only voided. */
@Entity('payment')
export class PaymentEntity extends ResourceEntity {
  @Column({ name: 'invoice_id', type: 'uuid' })
  invoiceId: string;

  @AmountColumn('amount')
  amount: Decimal;

  @Column({ type: 'text' })
  currency: string;

  @DateColumn('received_on')
  receivedOn: string;

  @Column({ type: 'text' })
  method: PaymentMethod;

  @Column({ type: 'text', nullable: true })
  reference: string | null;

  @Column({ name: 'voided_at', type: 'timestamptz', nullable: true })
  voidedAt: Date | null;

  @Column({ name: 'void_reason', type: 'text', nullable: true })
  voidReason: string | null;
}
