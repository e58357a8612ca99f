import { Column, Entity } from 'typeorm';
import type { Decimal } from '../../domain/decimal.js';
import { DecimalColumn } from '../../platform/database/columns.js';
import { ResourceEntity } from '../../platform/resources/resource-entity.js';
import type { HeldReason } from './held/held-because.js';

export const TIME_KINDS = ['work', 'travel'] as const;
export type TimeKind = (typeof TIME_KINDS)[number];

/** A break as it lies in the row; its instants in RFC 3339. */
export interface StoredBreak {
  readonly startedAt: string;
  readonly endedAt: string;
  readonly paid: boolean;
}

/** Who worked on which job and cost code, from when to when. */
@Entity('time_entry')
export class TimeEntryEntity extends ResourceEntity {
  @Column({ name: 'job_id', type: 'uuid' })
  jobId: string;

  @Column({ name: 'person_id', type: 'uuid' })
  personId: string;

  @Column({ name: 'cost_code', type: 'text' })
  costCode: string;

  @Column({ name: 'started_at', type: 'timestamptz' })
  startedAt: Date;

  /** null while the hours run; they count for nothing yet. */
  @Column({ name: 'ended_at', type: 'timestamptz', nullable: true })
  endedAt: Date | null;

  @Column({ type: 'text', default: 'work' })
  kind: TimeKind;

  @Column({ type: 'jsonb', default: [] })
  breaks: StoredBreak[];

  /** What of `breaks` is not paid; `unpaidBreakMinutes` comes on top. */
  @DecimalColumn('unpaid_span_seconds', 8, 3, { default: 0 })
  unpaidSpanSeconds: Decimal;

  @Column({ name: 'unpaid_break_minutes', type: 'integer', default: 0 })
  unpaidBreakMinutes: number;

  @Column({ type: 'text', nullable: true })
  note: string | null;

  @Column({ name: 'recorded_by', type: 'uuid' })
  recordedBy: string;

  /** As it was when the entry was made: a later raise must not make old jobs dearer. */
  @DecimalColumn('hourly_wage', 14, 4)
  hourlyWage: Decimal;

  @DecimalColumn('burden_percent', 9, 4)
  burdenPercent: Decimal;

  @Column({ name: 'voided_at', type: 'timestamptz', nullable: true })
  voidedAt: Date | null;

  @Column({ name: 'void_reason', type: 'text', nullable: true })
  voidReason: string | null;

  /** Why it counts for nothing until the office releases it; empty when it counts. */
  @Column({ name: 'held_because', type: 'text', array: true, default: () => "'{}'::text[]" })
  heldBecause: HeldReason[];

  /** Waits for the office to release it. */
  @Column({ type: 'boolean', generatedType: 'STORED', asExpression: "held_because <> '{}' AND voided_at IS NULL", insert: false, update: false })
  held: boolean;

  @Column({ name: 'approved_at', type: 'timestamptz', nullable: true })
  approvedAt: Date | null;

  @Column({ name: 'approved_by', type: 'uuid', nullable: true })
  approvedBy: string | null;

  /** When the phone took it down, by its own clock. */
  @Column({ name: 'recorded_at', type: 'timestamptz', nullable: true })
  recordedAt: Date | null;

  @Column({ name: 'received_at', type: 'timestamptz', default: () => 'now()' })
  receivedAt: Date;

  /** The phone's clock less the service's; null when the phone did not tell its time. */
  @DecimalColumn('clock_skew_seconds', 14, 3, { nullable: true })
  clockSkewSeconds: Decimal | null;

  /** Who made this version of the entry, when and why; null in the first one. */
  @Column({ name: 'changed_at', type: 'timestamptz', nullable: true })
  changedAt: Date | null;

  @Column({ name: 'changed_by', type: 'uuid', nullable: true })
  changedBy: string | null;

  @Column({ name: 'change_reason', type: 'text', nullable: true })
  changeReason: string | null;
}
