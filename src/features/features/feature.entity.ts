import { Column, Entity } from 'typeorm';
import { ResourceEntity } from '../../platform/resources/resource-entity.js';
import type { FeatureKind } from './feature-kinds.js';

/** A pond, a stream, a waterfall or a basin at a site. */
@Entity('feature')
export class FeatureEntity extends ResourceEntity {
  @Column({ name: 'site_id', type: 'uuid' })
  siteId: string;

  @Column({ type: 'text' })
  kind: FeatureKind;

  @Column({ type: 'text' })
  name: string;

  @Column({ name: 'built_year', type: 'integer', nullable: true })
  builtYear: number | null;
}
