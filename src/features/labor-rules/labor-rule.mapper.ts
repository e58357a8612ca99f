import { Decimal } from '../../domain/decimal.js';
import type { ResourceEntity } from '../../platform/resources/resource-entity.js';
import type { LaborRuleEntity } from './labor-rule.entity.js';
import type { LaborRuleBody, LaborRuleView } from './labor-rules.dto.js';

export function toLaborRuleView(row: LaborRuleEntity): LaborRuleView {
  return { id: row.id, ...fields(row), createdAt: row.createdAt.toISOString() };
}

/** The rule as the request that would make it: what a patch is merged into. */
export function toLaborRuleBody(row: LaborRuleEntity): LaborRuleBody {
  return fields(row);
}

export function toLaborRuleRow(body: LaborRuleBody): Omit<LaborRuleEntity, keyof ResourceEntity | 'madeOrder'> {
  const { costCode, name, quantity, unit, effectiveFrom } = body;
  return {
    costCode,
    name,
    quantity,
    unit,
    setupHours: new Decimal(body.setupHours),
    hoursPerUnit: new Decimal(body.hoursPerUnit),
    minimumHours: new Decimal(body.minimumHours),
    effectiveFrom,
  };
}

function fields(row: LaborRuleEntity): Omit<LaborRuleView, 'id' | 'createdAt'> {
  const { costCode, name, quantity, unit, effectiveFrom } = row;
  return {
    costCode,
    name,
    quantity,
    unit,
    setupHours: row.setupHours.toFixed(),
    hoursPerUnit: row.hoursPerUnit.toFixed(),
    minimumHours: row.minimumHours.toFixed(),
    effectiveFrom,
  };
}
