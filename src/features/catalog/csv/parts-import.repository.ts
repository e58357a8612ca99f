import { Injectable } from '@nestjs/common';
import type { EntityManager } from 'typeorm';
import { v7 as uuidv7 } from 'uuid';
import type { Actor } from '../../../platform/auth/actor.js';
import { Clock } from '../../../platform/clock/clock.js';
import { entityRows } from '../../../platform/database/entity-rows.js';
import { TenantDatabase } from '../../../platform/database/tenant-database.js';
import { PartEntity } from '../part.entity.js';
import type { PartValues } from '../part.mapper.js';

export interface PartChange {
  readonly before: PartEntity;
  readonly values: PartValues;
}

const VALUES = 'sku, name, unit, unit_cost, currency, markup_percent, pack_size, tax_category, active, attributes';
const ROWS = `jsonb_to_recordset($2::jsonb) AS r(id uuid, version integer, sku text, name text, unit text, unit_cost numeric, currency text,
  markup_percent numeric, pack_size numeric, tax_category text, active boolean, attributes jsonb)`;
const INSERT = `INSERT INTO part (company_id, id, ${VALUES}) SELECT $1::uuid, id, ${VALUES} FROM ${ROWS} ON CONFLICT (company_id, sku) DO NOTHING RETURNING sku`;
const UPDATE = `
  WITH changed AS (
    UPDATE part p SET (${VALUES}, version) = (SELECT ${VALUES.replace(/\w+/g, 'r.$&')}, p.version + 1) FROM ${ROWS}
     WHERE p.company_id = $1 AND p.id = r.id AND p.version = r.version RETURNING p.sku
  ) SELECT sku FROM changed`;
const COSTS = `
  INSERT INTO part_cost (company_id, part_id, part_version, unit_cost, currency, recorded_at, recorded_by)
  SELECT company_id, id, version, unit_cost, currency, $3, $4 FROM part WHERE company_id = $1 AND sku = ANY ($2::text[])`;

/** Writes many parts in a handful of statements. */
@Injectable()
export class PartsImportRepository {
  constructor(
    private readonly db: TenantDatabase,
    private readonly clock: Clock,
  ) {}

  all(actor: Actor): Promise<PartEntity[]> {
    return this.db.read(actor, (manager) => entityRows(manager, PartEntity, 'WHERE company_id = $1 ORDER BY sku', [actor.companyId]));
  }

  async bySku(actor: Actor, skus: readonly string[]): Promise<Map<string, PartEntity>> {
    const rows = await this.db.read(actor, (manager) => entityRows(manager, PartEntity, 'WHERE company_id = $1 AND sku = ANY ($2::text[])', [actor.companyId, skus]));
    return new Map(rows.map((row) => [row.sku, row]));
  }

  /**
   * All in one transaction. A stock number that somebody else entered since, and a part that somebody else changed, are
   * left as they are.
   * @returns the stock numbers that were written
   */
  async write(actor: Actor, made: readonly PartValues[], changed: readonly PartChange[]): Promise<Set<string>> {
    return this.db.write(actor, async (manager) => {
      const inserted = await skusOf(manager, INSERT, actor, made.map((values) => ({ id: uuidv7(), ...columns(values) })));
      const updated = await skusOf(manager, UPDATE, actor, changed.map(({ before, values }) => ({ id: before.id, version: before.version, ...columns(values) })));
      const costlier = changed.filter(({ before, values }) => updated.includes(values.sku) && !before.unitCost.eq(values.unitCost)).map(({ values }) => values.sku);
      await manager.query(COSTS, [actor.companyId, [...inserted, ...costlier], this.clock.now(), actor.personId]);
      return new Set([...inserted, ...updated]);
    });
  }
}

function columns(values: PartValues): Record<string, unknown> {
  const { sku, name, unit, currency, active, attributes } = values;
  return {
    ...{ sku, name, unit, currency, active, attributes },
    unit_cost: values.unitCost.toFixed(),
    markup_percent: values.markupPercent.toFixed(),
    pack_size: values.packSize.toFixed(),
    tax_category: values.taxCategory,
  };
}

async function skusOf(manager: EntityManager, sql: string, actor: Actor, rows: readonly object[]): Promise<string[]> {
  const answer = await manager.query<{ sku: string }[]>(sql, [actor.companyId, JSON.stringify(rows)]);
  return answer.map(({ sku }) => sku);
}
