import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { Decimal } from '../../domain/decimal.js';
import { AmountColumn, DecimalColumn } from '../../platform/database/columns.js';

/** A line as it was accepted, copied: it stands whatever becomes of the quote. */
@Entity('invoice_line')
export class InvoiceLineEntity {
  @PrimaryColumn({ name: 'company_id', type: 'uuid' })
  companyId: string;

  @PrimaryColumn({ type: 'uuid' })
  id: string;

  @Column({ name: 'invoice_id', type: 'uuid' })
  invoiceId: string;

  @Column({ type: 'integer' })
  position: number;

  @Column({ type: 'text' })
  kind: 'labor' | 'part' | 'other';

  @Column({ name: 'cost_code', type: 'text' })
  costCode: string;

  @Column({ type: 'text' })
  description: string;

  @DecimalColumn('quantity', 19, 6, { nullable: true })
  quantity: Decimal | null;

  @Column({ type: 'text', nullable: true })
  unit: string | null;

  @AmountColumn('unit_price')
  unitPrice: Decimal;

  @AmountColumn('amount')
  amount: Decimal;

  @Column({ name: 'tax_category', type: 'text', nullable: true })
  taxCategory: string | null;
}
