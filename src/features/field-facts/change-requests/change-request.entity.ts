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

  /** null until the office has answered. */
  @Column({ type: 'text', nullable: true })
  decision: Decision | null;

  @Column({ type: 'text', nullable: true })
  answer: string | null;

  @Column({ name: 'answered_at', type: 'timestamptz', nullable: true })
  answeredAt: Date | null;

  @Column({ name: 'answered_by', type: 'uuid', nullable: true })
  answeredBy: string | null;
}
