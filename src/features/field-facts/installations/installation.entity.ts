import { Column, Entity } from 'typeorm';
import { DateColumn } from '../../../platform/database/columns.js';
import { FactEntity } from '../fact/fact.entity.js';

/** Why the item stays though its record is void: somebody changed it, or something else names it. */
export type ItemStaysBecause = 'changed' | 'named';

/** A device that the crew put in, and the item of equipment that it became. */
@Entity('installation')
export class InstallationEntity extends FactEntity {
  @Column({ name: 'equipment_id', type: 'uuid' })
  equipmentId: string;

  @Column({ type: 'text' })
  kind: string;

  @Column({ type: 'text', nullable: true })
  make: string | null;

  @Column({ type: 'text', nullable: true })
  model: string | null;

  @Column({ name: 'serial_number', type: 'text', nullable: true })
  serialNumber: string | null;

  @DateColumn('warranty_until', { nullable: true })
  warrantyUntil: string | null;

  /** null unless the record is void and its item is still in place. */
  @Column({ name: 'item_stays_because', type: 'text', nullable: true })
  itemStaysBecause: ItemStaysBecause | null;
}
