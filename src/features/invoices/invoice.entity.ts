import { Column, Entity } from 'typeorm';
import type { Decimal } from '../../domain/decimal.js';
import { AmountColumn, DateColumn } from '../../platform/database/columns.js';
import { ResourceEntity } from '../../platform/resources/resource-entity.js';

export const INVOICE_STATES = ['draft', 'issued', 'part-paid', 'paid', 'void'] as const;
export type InvoiceState = (typeof INVOICE_STATES)[number];

/** A tax as it was accepted; rate in percent, amounts in the invoice's currency, all as decimal strings. */
export interface StoredInvoiceTax {
  readonly category: string;
  readonly name: string;
  readonly rate: string;
  readonly base: string;
  readonly tax: string;
}

/** What a customer is asked to pay for a job. */
@Entity('invoice')
export class InvoiceEntity extends ResourceEntity {
  @Column({ name: 'job_id', type: 'uuid' })
  jobId: string;

  @Column({ type: 'text' })
  basis: 'final';

  @Column({ type: 'text' })
  state: InvoiceState;

  /** Given at issue, so that a draft thrown away leaves no gap in the series. */
  @Column({ type: 'text', nullable: true })
  number: string | null;

  @Column({ name: 'quote_id', type: 'uuid' })
  quoteId: string;

  @Column({ name: 'quote_revision', type: 'integer' })
  quoteRevision: number;

  @Column({ type: 'text' })
  title: string;

  @Column({ type: 'text' })
  currency: string;

  @AmountColumn('net_total')
  netTotal: Decimal;

  @AmountColumn('tax_total')
  taxTotal: Decimal;

  @AmountColumn('gross_total')
  grossTotal: Decimal;

  @Column({ type: 'jsonb' })
  taxes: StoredInvoiceTax[];

  /** The payments that are not voided. */
  @AmountColumn('paid_total', { default: 0 })
  paidTotal: Decimal;

  @Column({ name: 'issued_at', type: 'timestamptz', nullable: true })
  issuedAt: Date | null;

  @DateColumn('issued_on', { nullable: true })
  issuedOn: string | null;

  @DateColumn('due_on', { nullable: true })
  dueOn: string | null;

  @Column({ name: 'document_sha256', type: 'bytea', nullable: true })
  documentSha256: Buffer | null;

  @Column({ name: 'voided_at', type: 'timestamptz', nullable: true })
  voidedAt: Date | null;

  @Column({ name: 'void_reason', type: 'text', nullable: true })
  voidReason: string | null;
}
