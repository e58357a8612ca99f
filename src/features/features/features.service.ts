import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import type { Page } from '../../platform/http/lists.js';
import { type Made, ResourceStore } from '../../platform/resources/resource-store.js';
import { FeatureEntity } from './feature.entity.js';
import { toFeatureRow } from './feature.mapper.js';
import type { FeatureBody, FeatureListQuery } from './features.dto.js';

@Injectable()
export class FeaturesService {
  private readonly store: ResourceStore<FeatureEntity>;

  constructor(db: TenantDatabase) {
    this.store = new ResourceStore(db, FeatureEntity, 'feature');
  }

  async create(actor: Actor, body: FeatureBody): Promise<Made<FeatureEntity>> {
    return this.store.create(actor, body, toFeatureRow(body));
  }

  /** @throws Problem 404, alike for one of another company and for none */
  find(actor: Actor, id: string): Promise<FeatureEntity> {
    return this.store.find(actor, id);
  }

  list(actor: Actor, query: FeatureListQuery): Promise<Page<FeatureEntity>> {
    return this.store.list(actor, query, { siteId: query.siteId });
  }

  async update(actor: Actor, id: string, version: number, body: FeatureBody): Promise<FeatureEntity> {
    return this.store.update(actor, id, version, toFeatureRow(body));
  }
}
