import { Column, Entity } from 'typeorm';
import type { Decimal } from '../../domain/decimal.js';
import type { Unit } from '../../domain/quantity/index.js';
import { DateColumn, DecimalColumn } from '../../platform/database/columns.js';
import { ResourceEntity } from '../../platform/resources/resource-entity.js';
import type { RuleQuantity } from './rule-quantity.js';

/** Hours for a cost code as a function of one quantity, in force from a date. */
@Entity('labor_rule')
export class LaborRuleEntity extends ResourceEntity {
  /** Of two rules with the same date, the one made last is in force. Given by the database. */
  @Column({ name: 'made_order', type: 'bigint', insert: false, update: false })
  madeOrder: string;

  @Column({ name: 'cost_code', type: 'text' })
  costCode: string;

  @Column({ type: 'text' })
  name: string;

  @Column({ type: 'text' })
  quantity: RuleQuantity;

  @Column({ type: 'text' })
  unit: Unit;

  @DecimalColumn('setup_hours', 14, 6)
  setupHours: Decimal;

  @DecimalColumn('hours_per_unit', 14, 6)
  hoursPerUnit: Decimal;

  @DecimalColumn('minimum_hours', 14, 6)
  minimumHours: Decimal;

  @DateColumn('effective_from')
  effectiveFrom: string;
}
