import { Column, Entity } from 'typeorm';
import type { Quantity } from '../../../domain/quantity/index.js';
import { FactEntity } from '../fact/fact.entity.js';

export const HAULED_MATERIALS = ['sediment', 'soil', 'stone', 'plants', 'debris', 'water', 'other'] as const;
export type HauledMaterial = (typeof HAULED_MATERIALS)[number];

/** Loads that left the site. */
@Entity('hauled_load')
export class LoadEntity extends FactEntity {
  @Column({ type: 'text' })
  material: HauledMaterial;

  @Column({ type: 'integer' })
  loads: number;

  /** Of all these loads together, as all that follows. */
  @Column({ type: 'jsonb', nullable: true })
  volume: Quantity | null;

  @Column({ type: 'jsonb', nullable: true })
  weight: Quantity | null;

  @Column({ type: 'text', nullable: true })
  destination: string | null;

  @Column({ type: 'text', nullable: true })
  ticket: string | null;
}
