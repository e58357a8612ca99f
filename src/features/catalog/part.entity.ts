import { Column, Entity } from 'typeorm';
import type { Decimal } from '../../domain/decimal.js';
import type { Unit } from '../../domain/quantity/index.js';
import { AmountColumn, DecimalColumn } from '../../platform/database/columns.js';
import { ResourceEntity } from '../../platform/resources/resource-entity.js';
import type { PartAttributes, PartKind } from './attributes/index.js';

/** Something bought and sold on, at its cost of today. */
@Entity('part')
export class PartEntity extends ResourceEntity {
  @Column({ type: 'text' })
  sku: string;

  @Column({ type: 'text' })
  name: string;

  @Column({ type: 'text' })
  unit: Unit;

  @AmountColumn('unit_cost')
  unitCost: Decimal;

  @Column({ type: 'text' })
  currency: string;

  @DecimalColumn('markup_percent', 9, 4)
  markupPercent: Decimal;

  @DecimalColumn('pack_size', 14, 4)
  packSize: Decimal;

  @Column({ name: 'tax_category', type: 'text', nullable: true })
  taxCategory: string | null;

  @Column({ type: 'boolean', default: true })
  active: boolean;

  @Column({ type: 'jsonb', nullable: true })
  attributes: PartAttributes | null;

  /** The database takes it from the attributes. */
  @Column({ type: 'text', nullable: true, generatedType: 'STORED', asExpression: "attributes ->> 'kind'", insert: false, update: false })
  kind: PartKind | null;
}
