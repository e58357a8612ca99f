import { Column, Entity, PrimaryColumn } from 'typeorm';

/** A code that lets one phone in for one person; only the hash of the code is kept. */
@Entity('device_enrolment')
export class DeviceEnrolmentEntity {
  @PrimaryColumn({ name: 'company_id', type: 'uuid' })
  companyId: string;

  @PrimaryColumn({ type: 'uuid' })
  id: string;

  @Column({ name: 'created_at', type: 'timestamptz', default: () => 'now()' })
  createdAt: Date;

  @Column({ name: 'person_id', type: 'uuid' })
  personId: string;

  /** The sign-in that made the code: the code dies with it. */
  @Column({ name: 'session_id', type: 'uuid' })
  sessionId: string;

  @Column({ name: 'code_hash', type: 'bytea' })
  codeHash: Buffer;

  @Column({ name: 'expires_at', type: 'timestamptz' })
  expiresAt: Date;
}
