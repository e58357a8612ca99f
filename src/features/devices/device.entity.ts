import { Column, Entity } from 'typeorm';
import { ResourceEntity } from '../../platform/resources/resource-entity.js';

/** A phone that speaks for one person; only the hash of its secret is kept. */
@Entity('device')
export class DeviceEntity extends ResourceEntity {
  @Column({ name: 'enrolment_id', type: 'uuid' })
  enrolmentId: string;

  @Column({ name: 'person_id', type: 'uuid' })
  personId: string;

  @Column({ name: 'enrolled_by', type: 'uuid' })
  enrolledBy: string;

  @Column({ type: 'text' })
  name: string;

  @Column({ name: 'secret_hash', type: 'bytea' })
  secretHash: Buffer;

  @Column({ name: 'last_seen_at', type: 'timestamptz', nullable: true })
  lastSeenAt: Date | null;

  @Column({ name: 'revoked_at', type: 'timestamptz', nullable: true })
  revokedAt: Date | null;

  @Column({ name: 'revoked_because', type: 'text', nullable: true })
  revokedBecause: string | null;
}
