import { Decimal } from '../../domain/decimal.js';
import { toMoneyBody } from '../../platform/http/fields/index.js';
import type { ResourceEntity } from '../../platform/resources/resource-entity.js';
import type { PartCostEntity } from './part-cost.entity.js';
import type { PartEntity } from './part.entity.js';
import type { PartBody, PartCostView, PartView } from './parts.dto.js';

export function toPartView(row: PartEntity): PartView {
  return { id: row.id, ...fields(row), createdAt: row.createdAt.toISOString() };
}

/** The part as the request that would make it: what a patch is merged into. */
export function toPartBody(row: PartEntity): PartBody {
  return fields(row);
}

export function toPartRow(body: PartBody): Omit<PartEntity, keyof ResourceEntity> {
  const { sku, name, unit } = body;
  return {
    sku,
    name,
    unit,
    unitCost: new Decimal(body.unitCost.amount),
    currency: body.unitCost.currency,
    markupPercent: new Decimal(body.markupPercent),
    packSize: new Decimal(body.packSize ?? '1'),
    taxCategory: body.taxCategory ?? null,
    active: body.active ?? true,
  };
}

export function toPartCostView(row: PartCostEntity): PartCostView {
  const { id, recordedBy } = row;
  return { id, unitCost: toMoneyBody(row.unitCost, row.currency), recordedAt: row.recordedAt.toISOString(), recordedBy };
}

function fields(row: PartEntity): Omit<PartView, 'id' | 'createdAt'> {
  const { sku, name, unit, taxCategory, active } = row;
  return {
    sku,
    name,
    unit,
    unitCost: toMoneyBody(row.unitCost, row.currency),
    markupPercent: row.markupPercent.toFixed(),
    packSize: row.packSize.toFixed(),
    taxCategory,
    active,
  };
}
