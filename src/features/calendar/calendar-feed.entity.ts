import { Column, Entity } from 'typeorm';
import { ResourceEntity } from '../../platform/resources/resource-entity.js';

/** A subscription to one person's visits: whoever holds its address may read them. */
@Entity('calendar_feed')
export class CalendarFeedEntity extends ResourceEntity {
  @Column({ name: 'person_id', type: 'uuid' })
  personId: string;

  /** Where it is used, so that the right one can be revoked. */
  @Column({ type: 'text' })
  name: string;

  /** The enrolled device that it was made on, with which it ends; null for one made after a sign-in with a password. */
  @Column({ name: 'device_id', type: 'uuid', nullable: true })
  deviceId: string | null;

  @Column({ name: 'secret_hash', type: 'bytea' })
  secretHash: Buffer;

  @Column({ name: 'revoked_at', type: 'timestamptz', nullable: true })
  revokedAt: Date | null;
}
