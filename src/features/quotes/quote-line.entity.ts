import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { Decimal } from '../../domain/decimal.js';
import type { Working } from '../../domain/working.js';
import { AmountColumn, DecimalColumn } from '../../platform/database/columns.js';

/** How a line was priced, and for a measured one how its quantity was computed from the survey. */
export interface LineWorking extends Working {
  readonly takeoff?: Working;
}

/** A priced line of a revision. */
@Entity('quote_line')
export class QuoteLineEntity {
  @PrimaryColumn({ name: 'company_id', type: 'uuid' })
  companyId: string;

  @PrimaryColumn({ type: 'uuid' })
  id: string;

  @Column({ name: 'revision_id', type: 'uuid' })
  revisionId: string;

  @Column({ type: 'integer' })
  position: number;

  @Column({ type: 'text' })
  kind: 'labor' | 'part' | 'other';

  @Column({ name: 'cost_code', type: 'text' })
  costCode: string;

  @Column({ type: 'text' })
  description: string;

  /** What is counted, in `unit`: for labor what the rule counts, not its hours. */
  @DecimalColumn('quantity', 19, 6, { nullable: true })
  quantity: Decimal | null;

  @Column({ type: 'text', nullable: true })
  unit: string | null;

  @DecimalColumn('hours', 14, 6, { nullable: true })
  hours: Decimal | null;

  /** Of an hour for labor, else of a unit. */
  @AmountColumn('unit_price')
  unitPrice: Decimal;

  @AmountColumn('amount')
  amount: Decimal;

  @AmountColumn('unit_cost', { nullable: true })
  unitCost: Decimal | null;

  /** What is bought for the line; 0 for labor, whose wages nobody knows yet. */
  @AmountColumn('cost')
  cost: Decimal;

  @Column({ name: 'tax_category', type: 'text', nullable: true })
  taxCategory: string | null;

  @Column({ name: 'rule_id', type: 'uuid', nullable: true })
  ruleId: string | null;

  @Column({ name: 'part_id', type: 'uuid', nullable: true })
  partId: string | null;

  /** The key of its section; null for work that is taken in any case. */
  @Column({ type: 'text', nullable: true })
  section: string | null;

  @Column({ type: 'jsonb' })
  working: LineWorking;
}
