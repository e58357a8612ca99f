import { Column, Entity } from 'typeorm';
import type { Decimal } from '../../../domain/decimal.js';
import { DecimalColumn } from '../../../platform/database/columns.js';
import { FactEntity } from '../fact/fact.entity.js';

/** Material that went into the work. */
@Entity('material_use')
export class MaterialUseEntity extends FactEntity {
  @Column({ name: 'part_id', type: 'uuid', nullable: true })
  partId: string | null;

  /** A part's name as it was that day, unless the crew had better words. */
  @Column({ type: 'text' })
  description: string;

  @DecimalColumn('quantity', 19, 6)
  quantity: Decimal;

  @Column({ type: 'text' })
  unit: string;
}
