import { Injectable } from '@nestjs/common';
import { In } from 'typeorm';
import type { Actor } from '../../platform/auth/actor.js';
import { TenantDatabase } from '../../platform/database/tenant-database.js';
import type { Page } from '../../platform/http/lists.js';
import { type Made, ResourceStore } from '../../platform/resources/resource-store.js';
import { LaborRuleEntity } from './labor-rule.entity.js';
import { toLaborRuleRow } from './labor-rule.mapper.js';
import type { LaborRuleBody, LaborRuleListQuery } from './labor-rules.dto.js';
import { requireRuleUnit } from './rule-quantity.js';

@Injectable()
export class LaborRulesService {
  private readonly store: ResourceStore<LaborRuleEntity>;

  constructor(private readonly db: TenantDatabase) {
    this.store = new ResourceStore(db, LaborRuleEntity, 'labor rule');
  }

  async create(actor: Actor, body: LaborRuleBody): Promise<Made<LaborRuleEntity>> {
    requireRuleUnit(body);
    return this.store.create(actor, body, toLaborRuleRow(body));
  }

  find(actor: Actor, id: string): Promise<LaborRuleEntity> {
    return this.store.find(actor, id);
  }

  list(actor: Actor, query: LaborRuleListQuery): Promise<Page<LaborRuleEntity>> {
    return this.store.list(actor, query, { costCode: query.costCode });
  }

  async update(actor: Actor, id: string, version: number, body: LaborRuleBody): Promise<LaborRuleEntity> {
    requireRuleUnit(body);
    return this.store.update(actor, id, version, toLaborRuleRow(body));
  }

  /** The rules with these ids (in lower case) that there are, by id, in one query. */
  async findMany(actor: Actor, ids: readonly string[]): Promise<Map<string, LaborRuleEntity>> {
    if (ids.length === 0) return new Map();
    const rows = await this.db.read(actor, (manager) => manager.find(LaborRuleEntity, { where: { companyId: actor.companyId, id: In([...new Set(ids)]) } }));
    return new Map(rows.map((row) => [row.id, row]));
  }

  /**
   * The rule in force for each cost code that has one: the latest `effectiveFrom` on or before the day; of two, the
   * one made last. One query, however many codes.
   * @param asOf YYYY-MM-DD
   */
  async inForce(actor: Actor, costCodes: readonly string[], asOf: string): Promise<Map<string, LaborRuleEntity>> {
    if (costCodes.length === 0) return new Map();
    const rows = await this.db.read(actor, (manager) =>
      manager
        .createQueryBuilder(LaborRuleEntity, 'r')
        .distinctOn(['r.costCode'])
        .where('r.companyId = :companyId AND r.costCode IN (:...costCodes) AND r.effectiveFrom <= :asOf', { companyId: actor.companyId, costCodes: [...new Set(costCodes)], asOf })
        .orderBy({ 'r.costCode': 'ASC', 'r.effectiveFrom': 'DESC', 'r.madeOrder': 'DESC' })
        .getMany(),
    );
    return new Map(rows.map((row) => [row.costCode, row]));
  }
}
