import { Column, Entity } from 'typeorm';
import type { Decimal } from '../../../domain/decimal.js';
import { AmountColumn, DateColumn } from '../../../platform/database/columns.js';
import { ResourceEntity } from '../../../platform/resources/resource-entity.js';

/** What a person had earned in a calendar year up to a day, as the payroll kept elsewhere has it. */
@Entity('opening_wages')
export class OpeningWagesEntity extends ResourceEntity {
  @Column({ name: 'person_id', type: 'uuid' })
  personId: string;

  @DateColumn('through')
  through: string;

  /** That of `through`; one a person. */
  @Column({ type: 'integer', generatedType: 'STORED', asExpression: '(EXTRACT(year FROM through))::integer', insert: false, update: false })
  year: number;

  @AmountColumn('all_pay')
  allPay: Decimal;

  /** Without the premium of overtime. */
  @AmountColumn('straight_pay')
  straightPay: Decimal;

  @Column({ type: 'text' })
  currency: string;
}
