import { Column, Entity, PrimaryColumn } from 'typeorm';
import type { Decimal } from '../../domain/decimal.js';
import { AmountColumn } from '../../platform/database/columns.js';

/** What a part cost from one version of it on. Only ever added to. */
@Entity('part_cost')
export class PartCostEntity {
  @PrimaryColumn({ name: 'company_id', type: 'uuid' })
  companyId: string;

  @PrimaryColumn({ type: 'uuid', default: () => 'uuidv7()' })
  id: string;

  @Column({ name: 'part_id', type: 'uuid' })
  partId: string;

  @Column({ name: 'part_version', type: 'integer' })
  partVersion: number;

  @AmountColumn('unit_cost')
  unitCost: Decimal;

  @Column({ type: 'text' })
  currency: string;

  @Column({ name: 'recorded_at', type: 'timestamptz', default: () => 'now()' })
  recordedAt: Date;

  @Column({ name: 'recorded_by', type: 'uuid', nullable: true })
  recordedBy: string | null;
}
