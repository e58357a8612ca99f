import { Column, Entity } from 'typeorm';
import { ResourceEntity } from '../../platform/resources/resource-entity.js';

/** An offer; what it says stands in its revisions. */
@Entity('quote')
export class QuoteEntity extends ResourceEntity {
  @Column({ type: 'text' })
  number: string;

  /** The current one. */
  @Column({ type: 'integer', default: 1 })
  revision: number;

  @Column({ name: 'customer_id', type: 'uuid', nullable: true })
  customerId: string | null;

  @Column({ name: 'site_id', type: 'uuid', nullable: true })
  siteId: string | null;

  @Column({ name: 'feature_id', type: 'uuid', nullable: true })
  featureId: string | null;
}
