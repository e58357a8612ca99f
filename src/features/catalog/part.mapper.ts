import { Decimal } from '../../domain/decimal.js';
import { toMoneyBody } from '../../platform/http/fields/index.js';
import { filled } from '../../platform/http/filled.js';
import { atPointer } from '../../platform/http/problems.js';
import type { ResourceEntity } from '../../platform/resources/resource-entity.js';
import { type PartAttributes, requireSoundAttributes } from './attributes/index.js';
import type { PartCostEntity } from './part-cost.entity.js';
import type { PartEntity } from './part.entity.js';
import type { PartBody, PartCostView, PartView } from './parts.dto.js';

export function toPartView(row: PartEntity): PartView {
  return { id: row.id, ...fields(row), createdAt: row.createdAt.toISOString() };
}

/** The part as the request that would make it: what a patch is merged into. */
export function toPartBody(row: PartValues): PartBody {
  return fields(row);
}

/** What a client can set of a part: all but what the database adds. */
export type PartValues = Omit<PartEntity, keyof ResourceEntity | 'kind'>;

/** @throws Problem 400 at every place of the attributes that does not fit the others */
export function toPartRow(body: PartBody): PartValues {
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
    attributes: toAttributes(body),
  };
}

export function toPartCostView(row: PartCostEntity): PartCostView {
  const { id, recordedBy } = row;
  return { id, unitCost: toMoneyBody(row.unitCost, row.currency), recordedAt: row.recordedAt.toISOString(), recordedBy };
}

function toAttributes({ attributes }: PartBody): PartAttributes | null {
  if (attributes === null || attributes === undefined) return null;
  atPointer('/attributes', () => requireSoundAttributes(attributes));
  return filled(attributes);
}

function fields(row: PartValues): Omit<PartView, 'id' | 'createdAt'> {
  const { sku, name, unit, taxCategory, active, attributes } = row;
  return {
    sku,
    name,
    unit,
    unitCost: toMoneyBody(row.unitCost, row.currency),
    markupPercent: row.markupPercent.toFixed(),
    packSize: row.packSize.toFixed(),
    taxCategory,
    active,
    attributes,
  };
}
