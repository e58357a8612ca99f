import { Column, Entity } from 'typeorm';
import type { Quantity } from '../../../domain/quantity/index.js';
import { FactEntity } from '../fact/fact.entity.js';

/** A depth as it was found once the pond was opened up. */
@Entity('found_depth')
export class DepthEntity extends FactEntity {
  @Column({ type: 'text' })
  place: string;

  @Column({ name: 'to_sediment', type: 'jsonb', nullable: true })
  toSediment: Quantity | null;

  @Column({ name: 'to_bottom', type: 'jsonb' })
  toBottom: Quantity;
}
