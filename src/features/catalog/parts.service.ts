import { Injectable } from '@nestjs/common';
import { In } from 'typeorm';
import type { Actor } from '../../platform/auth/actor.js';
import { entityRows } from '../../platform/database/entity-rows.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import type { ListQuery, Page } from '../../platform/http/lists.js';
import { type Made, ResourceStore } from '../../platform/resources/resource-store.js';
import { CompaniesService, requireCompanyCurrency, requireTaxCategory } from '../companies/index.js';
import type { PartCostEntity } from './part-cost.entity.js';
import { PartCostsRepository } from './part-costs.repository.js';
import type { PartKind } from './attributes/index.js';
import { PartEntity } from './part.entity.js';
import { toPartRow } from './part.mapper.js';
import type { PartBody, PartListQuery } from './parts.dto.js';

/** More of one kind than a catalog has that somebody looks after; each takes time to be weighed. */
export const MOST_OF_A_KIND = 1000;

const OF_KINDS = `WHERE id IN (
  SELECT one.id FROM unnest($2::text[]) AS wanted (kind)
  CROSS JOIN LATERAL (SELECT id FROM part WHERE company_id = $1 AND kind = wanted.kind AND active ORDER BY sku LIMIT $3) AS one
) ORDER BY sku`;

@Injectable()
export class PartsService {
  private readonly store: ResourceStore<PartEntity>;

  constructor(
    private readonly db: TenantDatabase,
    private readonly companies: CompaniesService,
    private readonly costs: PartCostsRepository,
  ) {
    this.store = new ResourceStore(db, PartEntity, 'part');
  }

  /** @throws Problem 400 for another currency or an unknown tax category, 409 when the stock number is taken */
  async create(actor: Actor, body: PartBody): Promise<Made<PartEntity>> {
    return this.db.write(actor, async () => {
      const there = await this.store.madeBefore(actor, body);
      if (there !== null) return { row: there, created: false };
      await this.check(actor, body);
      const made = await this.store.create(actor, body, toPartRow(body));
      if (made.created) await this.costs.record(actor, made.row);
      return made;
    });
  }

  find(actor: Actor, id: string): Promise<PartEntity> {
    return this.store.find(actor, id);
  }

  /**
   * The parts in use whose attributes are of these kinds, by sku, in one query; of each kind at most MOST_OF_A_KIND, the
   * first by sku. The bound is each kind's own: thousands of fittings must not push the pumps out.
   */
  ofKinds(actor: Actor, kinds: readonly PartKind[]): Promise<PartEntity[]> {
    return this.db.read(actor, (manager) => entityRows(manager, PartEntity, OF_KINDS, [actor.companyId, kinds, MOST_OF_A_KIND]));
  }

  /** The parts with these ids (in lower case) that there are, by id, in one query. */
  async findMany(actor: Actor, ids: readonly string[]): Promise<Map<string, PartEntity>> {
    if (ids.length === 0) return new Map();
    const rows = await this.db.read(actor, (manager) => manager.find(PartEntity, { where: { companyId: actor.companyId, id: In([...new Set(ids)]) } }));
    return new Map(rows.map((row) => [row.id, row]));
  }

  list(actor: Actor, query: PartListQuery): Promise<Page<PartEntity>> {
    return this.store.list(actor, query, { sku: query.sku, kind: query.kind });
  }

  async update(actor: Actor, id: string, version: number, body: PartBody): Promise<PartEntity> {
    return this.db.write(actor, async () => {
      await this.check(actor, body);
      const before = await this.store.find(actor, id);
      const row = await this.store.update(actor, id, version, toPartRow(body));
      if (!row.unitCost.eq(before.unitCost)) await this.costs.record(actor, row);
      return row;
    });
  }

  /** What the part cost over time. @throws Problem 404 */
  async listCosts(actor: Actor, id: string, query: ListQuery): Promise<Page<PartCostEntity>> {
    await this.store.find(actor, id);
    return this.costs.list(actor, id, query);
  }

  private async check(actor: Actor, body: PartBody): Promise<void> {
    const company = await this.companies.current(actor);
    requireCompanyCurrency(company, body.unitCost, '/unitCost');
    requireTaxCategory(company, body.taxCategory, '/taxCategory');
  }
}
