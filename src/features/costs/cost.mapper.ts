import { Decimal } from '../../domain/decimal.js';
import { toMoneyBody } from '../../platform/http/fields/index.js';
import type { CostEntity } from './cost.entity.js';
import type { CostBody, CostView } from './costs.dto.js';

export function toCostView(row: CostEntity): CostView {
  const { id, jobId, costCode, kind, description, incurredOn, supplier, reference, receiptId, voidReason } = row;
  return {
    id, jobId, costCode, kind, description,
    amount: toMoneyBody(row.amount, row.currency),
    incurredOn, supplier, reference, receiptId,
    voidedAt: row.voidedAt?.toISOString() ?? null,
    voidReason,
    createdAt: row.createdAt.toISOString(),
  };
}

/** The cost as the request that would make it: what a patch is merged into. */
export function toCostBody(row: CostEntity): CostBody {
  const { jobId, costCode, kind, description, incurredOn, supplier, reference, receiptId } = row;
  return { jobId, costCode, kind, description, amount: toMoneyBody(row.amount, row.currency), incurredOn, supplier, reference, receiptId };
}

type FromRequest = 'jobId' | 'costCode' | 'kind' | 'description' | 'amount' | 'currency' | 'incurredOn' | 'supplier' | 'reference' | 'receiptId';

export function toCostRow(body: CostBody): Pick<CostEntity, FromRequest> {
  const { jobId, costCode, kind, description, incurredOn } = body;
  const { amount, currency } = body.amount;
  return { jobId, costCode, kind, description, amount: new Decimal(amount), currency, incurredOn, supplier: body.supplier ?? null, reference: body.reference ?? null, receiptId: body.receiptId ?? null };
}
