import { Column, Entity, PrimaryColumn } from 'typeorm';

/** One sign-in on one device: the family of all refresh tokens that came from it. */
@Entity('sign_in_session')
export class SessionEntity {
  @PrimaryColumn({ name: 'company_id', type: 'uuid' })
  companyId: string;

  @PrimaryColumn({ type: 'uuid' })
  id: string;

  @Column({ name: 'person_id', type: 'uuid' })
  personId: string;

  /** The enrolled device that opened it; null for a sign-in with a password. */
  @Column({ name: 'device_id', type: 'uuid', nullable: true })
  deviceId: string | null;

  @Column({ name: 'started_at', type: 'timestamptz', default: () => 'now()' })
  startedAt: Date;

  @Column({ name: 'revoked_at', type: 'timestamptz', nullable: true })
  revokedAt: Date | null;

  @Column({ name: 'revoked_because', type: 'text', nullable: true })
  revokedBecause: string | null;
}
