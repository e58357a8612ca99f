import { Decimal } from '../../../domain/decimal.js';
import type { ResourceEntity } from '../../../platform/resources/resource-entity.js';
import type { BurdenRateBody, BurdenRateView } from './burden-rates.dto.js';
import type { BurdenRateEntity } from './burden-rate.entity.js';

export function toBurdenRateView(row: BurdenRateEntity): BurdenRateView {
  return { id: row.id, ...fields(row), createdAt: row.createdAt.toISOString() };
}

/** The rate as the request that would make it: what a patch is merged into. */
export function toBurdenRateBody(row: BurdenRateEntity): BurdenRateBody {
  return fields(row);
}

export function toBurdenRateRow({ code, name, percent, yearlyWageCap, base, effectiveFrom }: BurdenRateBody): Omit<BurdenRateEntity, keyof ResourceEntity | 'madeOrder'> {
  return { code, name, percent: new Decimal(percent), yearlyWageCap: yearlyWageCap ? new Decimal(yearlyWageCap) : null, base, effectiveFrom };
}

function fields({ code, name, percent, yearlyWageCap, base, effectiveFrom }: BurdenRateEntity): Omit<BurdenRateView, 'id' | 'createdAt'> {
  return { code, name, percent: percent.toFixed(), yearlyWageCap: yearlyWageCap?.toFixed(Math.max(2, yearlyWageCap.decimalPlaces())) ?? null, base, effectiveFrom };
}
