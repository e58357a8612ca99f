import { Decimal } from '../../domain/decimal.js';
import { otherLine, partLine } from '../../domain/pricing/index.js';
import { atPointer, notPossible } from '../../platform/http/problems.js';
import type { PartEntity } from '../catalog/index.js';
import { type CompanyEntity, requireCompanyCurrency, requireTaxCategory } from '../companies/index.js';
import type { AskedOther, AskedPart } from './asked.js';
import type { NewLine } from './quotes.repository.js';

/**
 * @param pointer the place of the item in the request, such as /parts/0
 * @throws Problem 422 for a part that is no longer sold or whose tax category is gone, 400 for what can't be priced
 */
export function pricePart(item: AskedPart, part: PartEntity, company: CompanyEntity, pointer: string): NewLine {
  const { name, currency, taxCategory } = part;
  if (!part.active) throw notPossible(`The part ${part.sku} is no longer sold.`, [{ pointer: `${pointer}/partId`, detail: `is the part ${part.sku}, which is not active; name another one, or make it active again` }]);
  if (taxCategory !== null && !company.taxCategories.some(({ code }) => code === taxCategory)) {
    throw notPossible(`The part ${part.sku} is taxed as ${taxCategory}, and the company has no such tax category.`, [{ pointer: `${pointer}/partId`, detail: `is a part of the tax category ${taxCategory}, which is gone; give the part another one` }]);
  }
  const { unitCost, markupPercent, packSize } = part;
  const priced = atPointer(pointer, () =>
    partLine({ id: `${part.id} version ${part.version}`, name, unitCost, markupPercent, packSize, quantity: new Decimal(item.quantity), currency }),
  );
  return {
    kind: 'part',
    costCode: item.costCode,
    description: name,
    quantity: priced.quantity,
    unit: part.unit,
    hours: null,
    unitPrice: priced.unitPrice,
    amount: priced.amount,
    unitCost,
    cost: priced.cost,
    taxCategory,
    ruleId: null,
    partId: part.id,
    section: item.section ?? null,
    working: priced.working,
  };
}

/** @throws Problem 400 for another currency, an unknown tax category, or an amount that is too large */
export function priceOther(item: AskedOther, company: CompanyEntity, pointer: string): NewLine {
  requireCompanyCurrency(company, item.unitPrice, `${pointer}/unitPrice`);
  requireCompanyCurrency(company, item.unitCost, `${pointer}/unitCost`);
  requireTaxCategory(company, item.taxCategory, `${pointer}/taxCategory`);
  const quantity = new Decimal(item.quantity);
  const unitPrice = new Decimal(item.unitPrice.amount);
  const unitCost = new Decimal(item.unitCost?.amount ?? '0');
  const { amount, cost, working } = atPointer(pointer, () => otherLine({ quantity, unitPrice, unitCost, currency: company.currency }));
  return {
    kind: 'other',
    costCode: item.costCode,
    description: item.description,
    quantity,
    unit: null,
    hours: null,
    unitPrice,
    amount,
    unitCost,
    cost,
    taxCategory: item.taxCategory ?? null,
    ruleId: null,
    partId: null,
    section: item.section ?? null,
    working,
  };
}
