import { Column, Entity } from 'typeorm';
import { FactEntity } from '../fact/fact.entity.js';

/** What the customer signed at substantial completion. */
@Entity('sign_off')
export class SignOffEntity extends FactEntity {
  @Column({ name: 'signed_by', type: 'text' })
  signedBy: string;

  @Column({ type: 'text' })
  statement: string;

  @Column({ type: 'text', nullable: true })
  drawing: string | null;

  @Column({ name: 'attachment_id', type: 'uuid', nullable: true })
  attachmentId: string | null;

  /** The picture while it has not arrived; the database keeps the list. */
  @Column({ name: 'photos_missing', type: 'uuid', array: true, default: () => "'{}'::uuid[]" })
  photosMissing: string[];

  @Column({ name: 'waits_for_photos', type: 'boolean', generatedType: 'STORED', asExpression: "photos_missing <> '{}'", insert: false, update: false, select: false })
  readonly waitsForPhotos?: boolean;
}
