import { Column, Entity } from 'typeorm';
import { FactEntity } from '../fact/fact.entity.js';
import type { WaterFigures } from './water-reading.dto.js';

/** A test of the water while the work goes on. */
@Entity('water_reading')
export class WaterReadingEntity extends FactEntity {
  @Column({ type: 'jsonb' })
  figures: WaterFigures;
}
