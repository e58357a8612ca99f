import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { ProblemBody } from '../../../platform/http/problem.js';

export const KEPT_OUTCOMES = ['applied', 'conflict', 'rejected'] as const;
export type KeptOutcome = (typeof KEPT_OUTCOMES)[number];

/** A mutation that a phone pushed, and what became of it. */
@Entity('sync_mutation')
export class SyncMutationEntity {
  @PrimaryColumn({ name: 'company_id', type: 'uuid' })
  companyId: string;

  /** The phone's own id of the mutation. */
  @PrimaryColumn({ type: 'uuid' })
  id: string;

  @Column({ name: 'client_id', type: 'uuid' })
  clientId: string;

  @Column({ type: 'integer' })
  counter: number;

  @Column({ name: 'pushed_by', type: 'uuid' })
  pushedBy: string;

  @Column({ type: 'text' })
  kind: string;

  @Column({ type: 'bytea' })
  digest: Buffer;

  @Column({ type: 'text' })
  outcome: KeptOutcome;

  @Column({ type: 'text', nullable: true })
  entity: string | null;

  @Column({ name: 'entity_id', type: 'uuid', nullable: true })
  entityId: string | null;

  @Column({ type: 'integer', nullable: true })
  revision: number | null;

  @Column({ type: 'json', nullable: true })
  problem: ProblemBody | null;

  @Column({ name: 'recorded_at', type: 'timestamptz' })
  recordedAt: Date;

  @Column({ name: 'received_at', type: 'timestamptz' })
  receivedAt: Date;

  @Column({ name: 'clock_skew_seconds', type: 'integer', nullable: true })
  clockSkewSeconds: number | null;
}
