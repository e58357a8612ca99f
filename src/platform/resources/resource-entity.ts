import { Column, PrimaryColumn } from 'typeorm';

/** What every row has that a client can make and change. */
export abstract class ResourceEntity {
  @PrimaryColumn({ name: 'company_id', type: 'uuid' })
  companyId: string;

  @PrimaryColumn({ type: 'uuid' })
  id: string;

  /** Counts the changes; the ETag of the resource. */
  @Column({ type: 'integer', default: 1 })
  version: number;

  @Column({ name: 'created_at', type: 'timestamptz', default: () => 'now()' })
  createdAt: Date;

  /** Digest of the request that made the row: tells a repeated create from another one with the same id. */
  @Column({ name: 'create_digest', type: 'bytea', nullable: true })
  createDigest: Buffer | null;
}
