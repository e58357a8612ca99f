import { Column, Entity } from 'typeorm';
import type { Decimal } from '../../domain/decimal.js';
import { DecimalColumn } from '../../platform/database/columns.js';
import { ResourceEntity } from '../../platform/resources/resource-entity.js';

/** Who worked on which job and cost code, from when to when. */
@Entity('time_entry')
export class TimeEntryEntity extends ResourceEntity {
  @Column({ name: 'job_id', type: 'uuid' })
  jobId: string;

  @Column({ name: 'person_id', type: 'uuid' })
  personId: string;

  @Column({ name: 'cost_code', type: 'text' })
  costCode: string;

  @Column({ name: 'started_at', type: 'timestamptz' })
  startedAt: Date;

  @Column({ name: 'ended_at', type: 'timestamptz' })
  endedAt: Date;

  @Column({ name: 'unpaid_break_minutes', type: 'integer', default: 0 })
  unpaidBreakMinutes: number;

  @Column({ type: 'text', nullable: true })
  note: string | null;

  @Column({ name: 'recorded_by', type: 'uuid' })
  recordedBy: string;

  /** As it was when the entry was made: a later raise must not make old jobs dearer. */
  @DecimalColumn('hourly_wage', 14, 4)
  hourlyWage: Decimal;

  @DecimalColumn('burden_percent', 9, 4)
  burdenPercent: Decimal;

  @Column({ name: 'voided_at', type: 'timestamptz', nullable: true })
  voidedAt: Date | null;

  @Column({ name: 'void_reason', type: 'text', nullable: true })
  voidReason: string | null;
}
