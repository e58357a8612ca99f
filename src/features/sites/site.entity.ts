import { Column, Entity } from 'typeorm';
import { ResourceEntity } from '../../platform/resources/resource-entity.js';

/** Where the work is. */
@Entity('site')
export class SiteEntity extends ResourceEntity {
  @Column({ name: 'customer_id', type: 'uuid' })
  customerId: string;

  @Column({ type: 'text' })
  address: string;

  @Column({ name: 'time_zone', type: 'text' })
  timeZone: string;

  @Column({ name: 'access_notes', type: 'text', nullable: true })
  accessNotes: string | null;

  @Column({ type: 'text', nullable: true })
  hazards: string | null;

  /** WGS 84, degrees north; known together with the longitude or not at all. */
  @Column({ type: 'double precision', nullable: true })
  latitude: number | null;

  @Column({ type: 'double precision', nullable: true })
  longitude: number | null;
}
