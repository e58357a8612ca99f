import { Column, Entity } from 'typeorm';
import type { Decimal } from '../../../domain/decimal.js';
import type { BurdenComponent } from '../../../domain/worktime/week/index.js';
import { AmountColumn, DateColumn, DecimalColumn } from '../../../platform/database/columns.js';
import { ResourceEntity } from '../../../platform/resources/resource-entity.js';

/** One thing that the company pays on top of wages, in force from a date. */
@Entity('burden_rate')
export class BurdenRateEntity extends ResourceEntity {
  /** Of two rates of a code with the same date, the one made last is in force. Given by the database. */
  @Column({ name: 'made_order', type: 'bigint', insert: false, update: false })
  madeOrder: string;

  @Column({ type: 'text' })
  code: string;

  @Column({ type: 'text' })
  name: string;

  @DecimalColumn('percent', 9, 4)
  percent: Decimal;

  @AmountColumn('yearly_wage_cap', { nullable: true })
  yearlyWageCap: Decimal | null;

  @Column({ type: 'text' })
  base: BurdenComponent['base'];

  @DateColumn('effective_from')
  effectiveFrom: string;
}
