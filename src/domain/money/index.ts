export { minorUnits, roundMoney } from './currency.js';
export { formatMoney, formatSum, MONEY_LIMIT, parseMoney, requireWithinLimit, toMoney, type Money } from './money.js';
export { allocate } from './allocate.js';
export { taxByCategory, type CategoryTax, type TaxableLine, type TaxCategory, type Taxes } from './tax.js';
