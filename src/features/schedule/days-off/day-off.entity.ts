import { Column, Entity } from 'typeorm';
import { DateColumn } from '../../../platform/database/columns.js';
import { ResourceEntity } from '../../../platform/resources/resource-entity.js';

/** Days on which a person does not work. */
@Entity('day_off')
export class DayOffEntity extends ResourceEntity {
  @Column({ name: 'person_id', type: 'uuid' })
  personId: string;

  @DateColumn('first_day')
  firstDay: string;

  @DateColumn('last_day')
  lastDay: string;

  @Column({ type: 'text', nullable: true })
  note: string | null;

  @Column({ name: 'withdrawn_at', type: 'timestamptz', nullable: true })
  withdrawnAt: Date | null;
}
