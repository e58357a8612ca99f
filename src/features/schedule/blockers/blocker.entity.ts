import { Column, Entity } from 'typeorm';
import { DateColumn } from '../../../platform/database/columns.js';
import { ResourceEntity } from '../../../platform/resources/resource-entity.js';

export const BLOCKER_KINDS = ['utility-locate', 'permit', 'materials', 'other'] as const;
export type BlockerKind = (typeof BLOCKER_KINDS)[number];

/** Something that must be out of the way before the crew can work. */
@Entity('blocker')
export class BlockerEntity extends ResourceEntity {
  @Column({ name: 'job_id', type: 'uuid' })
  jobId: string;

  @Column({ type: 'text' })
  kind: BlockerKind;

  @DateColumn('requested_on', { nullable: true })
  requestedOn: string | null;

  /** When it is expected to be out of the way; null when nobody knows. */
  @DateColumn('clear_on', { nullable: true })
  clearOn: string | null;

  @DateColumn('cleared_on', { nullable: true })
  clearedOn: string | null;

  /** The last day on which the clearance holds; null when it does not lapse. */
  @DateColumn('valid_until', { nullable: true })
  validUntil: string | null;

  @Column({ type: 'text', nullable: true })
  reference: string | null;

  @Column({ type: 'text', nullable: true })
  note: string | null;

  @Column({ name: 'withdrawn_at', type: 'timestamptz', nullable: true })
  withdrawnAt: Date | null;
}
