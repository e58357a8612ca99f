import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { Decimal } from '../../domain/decimal.js';
import { DecimalColumn } from '../../platform/database/columns.js';

export interface StoredTaxCategory {
  readonly code: string;
  readonly name: string;
  /** Percent, as a decimal string. */
  readonly rate: string;
}

/** A contractor's firm and its settings. */
@Entity('company')
export class CompanyEntity {
  @PrimaryColumn({ name: 'company_id', type: 'uuid' })
  companyId: string;

  @Column({ type: 'uuid', generatedType: 'STORED', asExpression: 'company_id', insert: false, update: false })
  id: string;

  @Column({ type: 'integer', default: 1 })
  version: number;

  @Column({ name: 'created_at', type: 'timestamptz', default: () => 'now()' })
  createdAt: Date;

  @Column({ type: 'text' })
  name: string;

  @Column({ type: 'text', default: '' })
  address: string;

  @Column({ type: 'text', nullable: true })
  phone: string | null;

  @Column({ type: 'text', nullable: true })
  email: string | null;

  @Column({ name: 'licence_number', type: 'text', nullable: true })
  licenceNumber: string | null;

  @Column({ type: 'text' })
  currency: string;

  @Column({ name: 'time_zone', type: 'text' })
  timeZone: string;

  @Column({ type: 'text' })
  locale: string;

  @Column({ name: 'unit_system', type: 'text' })
  unitSystem: 'us' | 'metric';

  @Column({ name: 'paper_size', type: 'text' })
  paperSize: 'letter' | 'a4';

  @DecimalColumn('labor_sell_rate', 14, 4)
  laborSellRate: Decimal;

  @DecimalColumn('hour_increment', 8, 6)
  hourIncrement: Decimal;

  @Column({ name: 'tax_categories', type: 'jsonb', default: [] })
  taxCategories: StoredTaxCategory[];

  @Column({ name: 'labor_tax_category', type: 'text', nullable: true })
  laborTaxCategory: string | null;

  @Column({ name: 'payment_terms_days', type: 'integer', default: 30 })
  paymentTermsDays: number;

  @Column({ name: 'payment_instructions', type: 'text', nullable: true })
  paymentInstructions: string | null;

  /** Whether photos are stored as they come, with where and with what they were taken. */
  @Column({ name: 'keep_photo_location', type: 'boolean', default: false })
  keepPhotoLocation: boolean;
}
