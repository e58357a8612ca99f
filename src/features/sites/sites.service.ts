import { Injectable } from '@nestjs/common';
import type { Actor } from '../../platform/auth/actor.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import type { Page } from '../../platform/http/lists.js';
import { type Made, ResourceStore } from '../../platform/resources/resource-store.js';
import { CompaniesService } from '../companies/index.js';
import { SiteEntity } from './site.entity.js';
import { toSiteRow } from './site.mapper.js';
import type { SiteBody, SiteListQuery } from './sites.dto.js';

@Injectable()
export class SitesService {
  private readonly store: ResourceStore<SiteEntity>;

  constructor(db: TenantDatabase, private readonly companies: CompaniesService) {
    this.store = new ResourceStore(db, SiteEntity, 'site');
  }

  async create(actor: Actor, body: SiteBody): Promise<Made<SiteEntity>> {
    return this.store.create(actor, body, await this.toRow(actor, body));
  }

  /** @throws Problem 404, alike for a site of another company and for none */
  find(actor: Actor, id: string): Promise<SiteEntity> {
    return this.store.find(actor, id);
  }

  list(actor: Actor, query: SiteListQuery): Promise<Page<SiteEntity>> {
    return this.store.list(actor, query, { customerId: query.customerId });
  }

  async update(actor: Actor, id: string, version: number, body: SiteBody): Promise<SiteEntity> {
    return this.store.update(actor, id, version, await this.toRow(actor, body));
  }

  private async toRow(actor: Actor, body: SiteBody): Promise<ReturnType<typeof toSiteRow>> {
    const { timeZone } = await this.companies.current(actor);
    return toSiteRow(body, timeZone);
  }
}
