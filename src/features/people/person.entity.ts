import { Column, Entity } from 'typeorm';
import type { Decimal } from '../../domain/decimal.js';
import type { Role } from '../../platform/auth/actor.js';
import { DecimalColumn } from '../../platform/database/columns.js';
import { ResourceEntity } from '../../platform/resources/resource-entity.js';

/** Somebody who works for the company. */
@Entity('person')
export class PersonEntity extends ResourceEntity {
  @Column({ type: 'text' })
  name: string;

  @Column({ type: 'text' })
  email: string;

  @Column({ type: 'text', nullable: true })
  phone: string | null;

  @Column({ type: 'text' })
  role: Role;

  @Column({ type: 'boolean', default: true })
  active: boolean;

  @DecimalColumn('hourly_wage', 14, 4)
  hourlyWage: Decimal;

  @DecimalColumn('burden_percent', 9, 4)
  burdenPercent: Decimal;
}
