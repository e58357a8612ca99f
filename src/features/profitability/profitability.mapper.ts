import type { Decimal } from '../../domain/decimal.js';
import { type MoneyBody, toMoneyBody } from '../../platform/http/fields/index.js';
import type { ProfitabilityView } from './profitability.dto.js';
import type { Profitability } from './profitability.service.js';

export function toProfitabilityView(figures: Profitability): ProfitabilityView {
  const money = (amount: Decimal): MoneyBody => toMoneyBody(amount, figures.currency);
  const { spent, hours } = figures;
  return {
    contractTotal: money(figures.contract),
    invoicedTotal: money(figures.invoiced),
    receivedTotal: money(figures.received),
    costs: {
      labor: money(figures.labor),
      material: money(spent.material),
      disposal: money(spent.disposal),
      rental: money(spent.rental),
      subcontract: money(spent.subcontract),
      other: money(spent.other),
      total: money(figures.cost),
    },
    margin: money(figures.margin),
    marginPercent: figures.marginPercent?.toFixed(2) ?? null,
    hours: {
      planned: inHours(hours.planned),
      actual: inHours(hours.actual),
      byCostCode: hours.byCostCode.map(({ costCode, planned, actual }) => ({ costCode, planned: inHours(planned), actual: inHours(actual) })),
    },
  };
}

/** A third of an hour has no end in decimals; four of them are a third of a second. */
function inHours(hours: Decimal): string {
  return hours.toDecimalPlaces(4).toFixed();
}
