import { Column, Entity, PrimaryColumn } from 'typeorm';

/** A file on its way from a phone, and what became of it. */
@Entity('upload')
export class UploadEntity {
  @PrimaryColumn({ name: 'company_id', type: 'uuid' })
  companyId: string;

  @PrimaryColumn({ type: 'uuid' })
  id: string;

  @Column({ name: 'created_at', type: 'timestamptz', default: () => 'now()' })
  createdAt: Date;

  /** Who sends it; nobody else may go on with it or see it. */
  @Column({ name: 'person_id', type: 'uuid' })
  personId: string;

  /** Of the whole file, in bytes. */
  @Column({ type: 'integer' })
  size: number;

  /** Of the whole file, as its sender says. */
  @Column({ type: 'bytea' })
  sha256: Buffer;

  /** What the sender said of it, as the protocol gives it back. */
  @Column({ type: 'jsonb' })
  metadata: Record<string, string | null>;

  /** The stored bytes, once the file was there whole and was looked at; null before. */
  @Column({ name: 'file_sha256', type: 'bytea', nullable: true })
  fileSha256: Buffer | null;

  @Column({ name: 'file_size', type: 'integer', nullable: true })
  fileSize: number | null;

  @Column({ name: 'media_type', type: 'text', nullable: true })
  mediaType: string | null;

  @Column({ type: 'integer', nullable: true })
  width: number | null;

  @Column({ type: 'integer', nullable: true })
  height: number | null;

  @Column({ name: 'thumbnail_sha256', type: 'bytea', nullable: true })
  thumbnailSha256: Buffer | null;
}
