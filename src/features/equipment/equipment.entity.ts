import { Column, Entity } from 'typeorm';
import { DateColumn } from '../../platform/database/columns.js';
import { ResourceEntity } from '../../platform/resources/resource-entity.js';

/** A setting of a device, such as a timer or a dose, by its name. */
export type Setting = string | number | boolean;

/** An item installed at a feature. */
@Entity('equipment')
export class EquipmentEntity extends ResourceEntity {
  @Column({ name: 'feature_id', type: 'uuid' })
  featureId: string;

  @Column({ type: 'text' })
  kind: string;

  @Column({ type: 'text', nullable: true })
  make: string | null;

  @Column({ type: 'text', nullable: true })
  model: string | null;

  @Column({ name: 'serial_number', type: 'text', nullable: true })
  serialNumber: string | null;

  @DateColumn('installed_on', { nullable: true })
  installedOn: string | null;

  @DateColumn('warranty_until', { nullable: true })
  warrantyUntil: string | null;

  /** null while it is in place. */
  @DateColumn('removed_on', { nullable: true })
  removedOn: string | null;

  @Column({ type: 'text', nullable: true })
  condition: string | null;

  @Column({ type: 'jsonb', default: {} })
  settings: Record<string, Setting>;
}
