import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { Decimal } from '../../domain/decimal.js';
import { AmountColumn, DateColumn } from '../../platform/database/columns.js';
import type { Asked } from './asked.js';
import type { QuoteSection } from './quote-sections.js';

export const QUOTE_STATES = ['draft', 'issued', 'accepted', 'superseded'] as const;
export type QuoteState = (typeof QUOTE_STATES)[number];

/** A tax of a revision; rate in percent, amounts in the revision's currency, all as decimal strings. */
export interface StoredTax {
  readonly category: string;
  readonly name: string;
  readonly rate: string;
  readonly base: string;
  readonly tax: string;
}

/** A section with its own totals, as if it were taken alone; decimal strings like those of its taxes. */
export interface StoredSection extends QuoteSection {
  readonly netTotal: string;
  readonly taxTotal: string;
  readonly grossTotal: string;
  readonly taxes: readonly StoredTax[];
}

/** One priced version of a quote. Once issued it never changes; triggers see to that. */
@Entity('quote_revision')
export class QuoteRevisionEntity {
  @PrimaryColumn({ name: 'company_id', type: 'uuid' })
  companyId: string;

  @PrimaryColumn({ type: 'uuid' })
  id: string;

  @Column({ name: 'quote_id', type: 'uuid' })
  quoteId: string;

  @Column({ type: 'integer' })
  revision: number;

  @Column({ type: 'text' })
  state: QuoteState;

  @Column({ name: 'survey_id', type: 'uuid', nullable: true })
  surveyId: string | null;

  @Column({ type: 'text' })
  title: string;

  /** Why it was made, for the office. */
  @Column({ type: 'text', nullable: true })
  reason: string | null;

  @DateColumn('valid_until', { nullable: true })
  validUntil: string | null;

  @DateColumn('rules_as_of')
  rulesAsOf: string;

  @Column({ type: 'jsonb' })
  asked: Asked;

  @Column({ type: 'text' })
  currency: string;

  @Column({ type: 'jsonb', default: [] })
  sections: StoredSection[];

  /** Of all but the optional sections, as are the other totals and the taxes. */
  @AmountColumn('net_total')
  netTotal: Decimal;

  @AmountColumn('tax_total')
  taxTotal: Decimal;

  @AmountColumn('gross_total')
  grossTotal: Decimal;

  @Column({ type: 'jsonb' })
  taxes: StoredTax[];

  @Column({ name: 'created_at', type: 'timestamptz', default: () => 'now()' })
  createdAt: Date;

  @Column({ name: 'issued_at', type: 'timestamptz', nullable: true })
  issuedAt: Date | null;

  @DateColumn('issued_on', { nullable: true })
  issuedOn: string | null;

  @Column({ name: 'document_sha256', type: 'bytea', nullable: true })
  documentSha256: Buffer | null;

  @Column({ name: 'accepted_by', type: 'text', nullable: true })
  acceptedBy: string | null;

  @DateColumn('accepted_on', { nullable: true })
  acceptedOn: string | null;

  @Column({ name: 'accepted_at', type: 'timestamptz', nullable: true })
  acceptedAt: Date | null;

  /** The keys of the sections taken; the accepted totals are those of what was taken. */
  @Column({ name: 'accepted_sections', type: 'jsonb', nullable: true })
  acceptedSections: string[] | null;

  @AmountColumn('accepted_net_total', { nullable: true })
  acceptedNetTotal: Decimal | null;

  @AmountColumn('accepted_tax_total', { nullable: true })
  acceptedTaxTotal: Decimal | null;

  @AmountColumn('accepted_gross_total', { nullable: true })
  acceptedGrossTotal: Decimal | null;

  @Column({ name: 'accepted_taxes', type: 'jsonb', nullable: true })
  acceptedTaxes: StoredTax[] | null;
}
