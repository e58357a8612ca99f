import { Column, Entity } from 'typeorm';
import { FactEntity } from '../fact/fact.entity.js';

export const DECISIONS = ['taken-up', 'declined'] as const;
export type Decision = (typeof DECISIONS)[number];

/** What the crew found that the contract does not cover. */
@Entity('change_request')
export class ChangeRequestEntity extends FactEntity {
  @Column({ type: 'text' })
  description: string;

  @Column({ name: 'attachment_ids', type: 'jsonb', default: [] })
  attachmentIds: string[];

  /** Those that have not arrived yet; the database keeps the list. */
  @Column({ name: 'photos_missing', type: 'uuid', array: true, default: () => "'{}'::uuid[]" })
  photosMissing: string[];

  @Column({ name: 'waits_for_photos', type: 'boolean', generatedType: 'STORED', asExpression: "photos_missing <> '{}'", insert: false, update: false, select: false })
  readonly waitsForPhotos?: boolean;

  /** null until the office has answered. */
  @Column({ type: 'text', nullable: true })
  decision: Decision | null;

  @Column({ type: 'text', nullable: true })
  answer: string | null;

  @Column({ name: 'answered_at', type: 'timestamptz', nullable: true })
  answeredAt: Date | null;

  /** The version that the answer made. */
  @Column({ name: 'answered_version', type: 'integer', nullable: true })
  answeredVersion: number | null;

  @Column({ name: 'answered_by', type: 'uuid', nullable: true })
  answeredBy: string | null;
}
