import { Column, Entity, PrimaryColumn } from 'typeorm';

/** One refresh token of a session; only the hash of its secret is kept. */
@Entity('refresh_token')
export class RefreshTokenEntity {
  @PrimaryColumn({ name: 'company_id', type: 'uuid' })
  companyId: string;

  @PrimaryColumn({ type: 'uuid' })
  id: string;

  @Column({ name: 'session_id', type: 'uuid' })
  sessionId: string;

  @Column({ name: 'secret_hash', type: 'bytea' })
  secretHash: Buffer;

  @Column({ name: 'expires_at', type: 'timestamptz' })
  expiresAt: Date;

  @Column({ name: 'used_at', type: 'timestamptz', nullable: true })
  usedAt: Date | null;
}
