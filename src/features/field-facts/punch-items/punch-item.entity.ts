import { Column, Entity } from 'typeorm';
import { ResourceEntity } from '../../../platform/resources/resource-entity.js';

export const PUNCH_STATES = ['open', 'done'] as const;
export type PunchState = (typeof PUNCH_STATES)[number];

/** Something left to do before the customer can be asked to sign. */
@Entity('punch_item')
export class PunchItemEntity extends ResourceEntity {
  @Column({ name: 'job_id', type: 'uuid' })
  jobId: string;

  @Column({ name: 'feature_id', type: 'uuid', nullable: true })
  featureId: string | null;

  @Column({ type: 'text' })
  description: string;

  @Column({ type: 'text', nullable: true })
  place: string | null;

  @Column({ type: 'text' })
  state: PunchState;

  /** null when the service itself made it. */
  @Column({ name: 'recorded_by', type: 'uuid', nullable: true })
  recordedBy: string | null;

  @Column({ name: 'done_at', type: 'timestamptz', nullable: true })
  doneAt: Date | null;

  @Column({ name: 'done_by', type: 'uuid', nullable: true })
  doneBy: string | null;
}
