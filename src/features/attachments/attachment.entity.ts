import { Column, Entity } from 'typeorm';
import { ResourceEntity } from '../../platform/resources/resource-entity.js';

export const ATTACHMENT_KINDS = ['photo', 'receipt', 'document'] as const;
export type AttachmentKind = (typeof ATTACHMENT_KINDS)[number];

/** A photo, receipt or document, and the one thing that it belongs to. */
@Entity('attachment')
export class AttachmentEntity extends ResourceEntity {
  @Column({ type: 'text' })
  kind: AttachmentKind;

  @Column({ name: 'job_id', type: 'uuid', nullable: true })
  jobId: string | null;

  @Column({ name: 'feature_id', type: 'uuid', nullable: true })
  featureId: string | null;

  @Column({ name: 'equipment_id', type: 'uuid', nullable: true })
  equipmentId: string | null;

  @Column({ name: 'cost_id', type: 'uuid', nullable: true })
  costId: string | null;

  @Column({ type: 'text', nullable: true })
  caption: string | null;

  @Column({ name: 'taken_at', type: 'timestamptz', nullable: true })
  takenAt: Date | null;

  @Column({ name: 'attached_by', type: 'uuid' })
  attachedBy: string;

  @Column({ name: 'file_sha256', type: 'bytea' })
  fileSha256: Buffer;

  /** In bytes. */
  @Column({ name: 'file_size', type: 'integer' })
  fileSize: number;

  @Column({ name: 'media_type', type: 'text' })
  mediaType: string;

  /** In pixels, upright; null for what is no image. */
  @Column({ type: 'integer', nullable: true })
  width: number | null;

  @Column({ type: 'integer', nullable: true })
  height: number | null;

  @Column({ name: 'thumbnail_sha256', type: 'bytea', nullable: true })
  thumbnailSha256: Buffer | null;

  @Column({ name: 'voided_at', type: 'timestamptz', nullable: true })
  voidedAt: Date | null;

  @Column({ name: 'void_reason', type: 'text', nullable: true })
  voidReason: string | null;
}
