import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { Decimal } from '../../domain/decimal.js';
import { AmountColumn, DecimalColumn } from '../../platform/database/columns.js';

/** What the accepted quote planned for one cost code, as it stood that day. */
@Entity('job_plan')
export class JobPlanEntity {
  @PrimaryColumn({ name: 'company_id', type: 'uuid' })
  companyId: string;

  @PrimaryColumn({ name: 'job_id', type: 'uuid' })
  jobId: string;

  @PrimaryColumn({ name: 'cost_code', type: 'text' })
  costCode: string;

  @Column({ type: 'uuid', default: () => 'uuidv7()' })
  id: string;

  /** The place in the quote's order. */
  @Column({ type: 'integer' })
  position: number;

  @DecimalColumn('hours', 14, 4)
  hours: Decimal;

  /** What the purchases of the code were expected to cost. */
  @AmountColumn('cost')
  cost: Decimal;

  /** What the customer pays for the code, net of tax. */
  @AmountColumn('amount')
  amount: Decimal;
}
