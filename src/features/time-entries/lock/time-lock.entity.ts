import { Column, Entity, PrimaryColumn } from 'typeorm';
import { DateColumn } from '../../../platform/database/columns.js';

/** Through which day the company's hours are settled. */
@Entity('time_lock')
export class TimeLockEntity {
  @PrimaryColumn({ name: 'company_id', type: 'uuid' })
  companyId: string;

  @Column({ type: 'uuid', generatedType: 'STORED', asExpression: 'company_id', insert: false, update: false })
  id: string;

  @Column({ type: 'integer', default: 1 })
  version: number;

  /** The last locked day, in the company's zone; null when none is. */
  @DateColumn('locked_through', { nullable: true })
  lockedThrough: string | null;

  @Column({ name: 'locked_by', type: 'uuid', nullable: true })
  lockedBy: string | null;

  @Column({ name: 'locked_at', type: 'timestamptz' })
  lockedAt: Date;
}
