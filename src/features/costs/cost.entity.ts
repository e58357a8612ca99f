import { Column, Entity } from 'typeorm';
import type { Decimal } from '../../domain/decimal.js';
import { AmountColumn, DateColumn } from '../../platform/database/columns.js';
import { ResourceEntity } from '../../platform/resources/resource-entity.js';

export const COST_KINDS = ['material', 'disposal', 'rental', 'subcontract', 'other'] as const;
export type CostKind = (typeof COST_KINDS)[number];

/** What was bought for a job, or credited by a supplier. */
@Entity('cost')
export class CostEntity extends ResourceEntity {
  @Column({ name: 'job_id', type: 'uuid' })
  jobId: string;

  @Column({ name: 'cost_code', type: 'text' })
  costCode: string;

  @Column({ type: 'text' })
  kind: CostKind;

  @Column({ type: 'text' })
  description: string;

  /** Below zero for a supplier's credit; never zero. */
  @AmountColumn('amount')
  amount: Decimal;

  @Column({ type: 'text' })
  currency: string;

  @DateColumn('incurred_on')
  incurredOn: string;

  @Column({ type: 'text', nullable: true })
  supplier: string | null;

  @Column({ type: 'text', nullable: true })
  reference: string | null;

  /** The attachment that shows the ticket or bill. */
  @Column({ name: 'receipt_id', type: 'uuid', nullable: true })
  receiptId: string | null;

  @Column({ name: 'voided_at', type: 'timestamptz', nullable: true })
  voidedAt: Date | null;

  @Column({ name: 'void_reason', type: 'text', nullable: true })
  voidReason: string | null;
}
