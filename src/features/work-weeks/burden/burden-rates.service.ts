import { Injectable } from '@nestjs/common';
import type { Actor } from '../../../platform/auth/actor.js';
import { entityRows } from '../../../platform/database/entity-rows.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import type { Page } from '../../../platform/http/lists.js';
import { type Made, ResourceStore } from '../../../platform/resources/resource-store.js';
import { BurdenRateEntity } from './burden-rate.entity.js';
import { toBurdenRateRow } from './burden-rate.mapper.js';
import type { BurdenRateBody, BurdenRateListQuery } from './burden-rates.dto.js';

@Injectable()
export class BurdenRatesService {
  private readonly store: ResourceStore<BurdenRateEntity>;

  constructor(private readonly db: TenantDatabase) {
    this.store = new ResourceStore(db, BurdenRateEntity, 'burden rate');
  }

  create(actor: Actor, body: BurdenRateBody): Promise<Made<BurdenRateEntity>> {
    return this.store.create(actor, body, toBurdenRateRow(body));
  }

  find(actor: Actor, id: string): Promise<BurdenRateEntity> {
    return this.store.find(actor, id);
  }

  list(actor: Actor, query: BurdenRateListQuery): Promise<Page<BurdenRateEntity>> {
    return this.store.list(actor, query, { code: query.code });
  }

  update(actor: Actor, id: string, version: number, body: BurdenRateBody): Promise<BurdenRateEntity> {
    return this.store.update(actor, id, version, toBurdenRateRow(body));
  }

  /** All of the company, by code, the one that counts first: by latest date, of two the one made last. One statement. */
  all(actor: Pick<Actor, 'companyId'>): Promise<BurdenRateEntity[]> {
    return this.db.read(actor, (manager) => entityRows(manager, BurdenRateEntity, 'WHERE company_id = $1 ORDER BY code, effective_from DESC, made_order DESC', [actor.companyId]));
  }
}
