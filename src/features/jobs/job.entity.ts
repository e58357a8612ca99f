import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { Decimal } from '../../domain/decimal.js';
import { AmountColumn, DateColumn } from '../../platform/database/columns.js';

export const JOB_STATES = ['planned', 'under-way', 'finished', 'cancelled'] as const;
export type JobState = (typeof JOB_STATES)[number];

/** Accepted work, from the day the quote was accepted until it is done. */
@Entity('job')
export class JobEntity {
  @PrimaryColumn({ name: 'company_id', type: 'uuid' })
  companyId: string;

  @PrimaryColumn({ type: 'uuid' })
  id: string;

  /** Counts the changes; the ETag of the job. */
  @Column({ type: 'integer', default: 1 })
  version: number;

  @Column({ name: 'created_at', type: 'timestamptz', default: () => 'now()' })
  createdAt: Date;

  @Column({ type: 'text' })
  number: string;

  @Column({ type: 'text' })
  state: JobState;

  @Column({ type: 'text' })
  title: string;

  @Column({ name: 'quote_id', type: 'uuid' })
  quoteId: string;

  @Column({ name: 'quote_revision', type: 'integer' })
  quoteRevision: number;

  @Column({ name: 'customer_id', type: 'uuid', nullable: true })
  customerId: string | null;

  @Column({ name: 'site_id', type: 'uuid', nullable: true })
  siteId: string | null;

  @Column({ name: 'feature_id', type: 'uuid', nullable: true })
  featureId: string | null;

  /** The site's zone: in it the days of the job begin and end. */
  @Column({ name: 'time_zone', type: 'text' })
  timeZone: string;

  @Column({ type: 'text' })
  currency: string;

  /** Net of tax. */
  @AmountColumn('contract_total')
  contractTotal: Decimal;

  @AmountColumn('contract_tax')
  contractTax: Decimal;

  @DateColumn('started_on', { nullable: true })
  startedOn: string | null;

  @DateColumn('finished_on', { nullable: true })
  finishedOn: string | null;

  @DateColumn('cancelled_on', { nullable: true })
  cancelledOn: string | null;

  @Column({ name: 'cancel_reason', type: 'text', nullable: true })
  cancelReason: string | null;
}
