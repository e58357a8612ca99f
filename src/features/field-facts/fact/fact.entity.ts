import { Column } from 'typeorm';
import { ResourceEntity } from '../../../platform/resources/resource-entity.js';

/** Something that happened on a job: taken down once, and voided when it was wrong. */
export abstract class FactEntity extends ResourceEntity {
  @Column({ name: 'job_id', type: 'uuid' })
  jobId: string;

  @Column({ name: 'feature_id', type: 'uuid', nullable: true })
  featureId: string | null;

  @Column({ name: 'happened_at', type: 'timestamptz' })
  happenedAt: Date;

  /** null when the service itself made it. */
  @Column({ name: 'recorded_by', type: 'uuid', nullable: true })
  recordedBy: string | null;

  @Column({ type: 'text', nullable: true })
  note: string | null;

  @Column({ name: 'voided_at', type: 'timestamptz', nullable: true })
  voidedAt: Date | null;

  @Column({ name: 'void_reason', type: 'text', nullable: true })
  voidReason: string | null;
}
