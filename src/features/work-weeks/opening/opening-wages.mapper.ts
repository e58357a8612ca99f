import { Decimal } from '../../../domain/decimal.js';
import { toMoneyBody } from '../../../platform/http/fields/index.js';
import type { OpeningWagesBody, OpeningWagesView } from './opening-wages.dto.js';
import type { OpeningWagesEntity } from './opening-wages.entity.js';

export function toOpeningWagesView(row: OpeningWagesEntity): OpeningWagesView {
  return { id: row.id, ...fields(row), year: row.year, createdAt: row.createdAt.toISOString() };
}

/** The opening wages as the request that would make them: what a patch is merged into. So that `allPay` can be lowered by itself, the rest is told only where it differs. */
export function toOpeningWagesBody(row: OpeningWagesEntity): OpeningWagesBody {
  const { straightPay, ...body } = fields(row);
  return { ...body, straightPay: row.straightPay.eq(row.allPay) ? null : straightPay };
}

export function toOpeningWagesRow({ personId, through, allPay, straightPay }: OpeningWagesBody): Pick<OpeningWagesEntity, 'personId' | 'through' | 'allPay' | 'straightPay' | 'currency'> {
  return { personId, through, allPay: new Decimal(allPay.amount), straightPay: new Decimal((straightPay ?? allPay).amount), currency: allPay.currency };
}

function fields({ personId, through, allPay, straightPay, currency }: OpeningWagesEntity): Omit<OpeningWagesView, 'id' | 'year' | 'createdAt'> {
  return { personId, through, allPay: toMoneyBody(allPay, currency), straightPay: toMoneyBody(straightPay, currency) };
}
