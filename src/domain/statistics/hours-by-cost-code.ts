import { Decimal, sumDecimals } from '../decimal.js';

export interface CostCodeHours {
  readonly costCode: string;
  readonly hours: Decimal;
}

export interface PlannedAndActual {
  readonly costCode: string;
  readonly planned: Decimal;
  readonly actual: Decimal;
}

export interface HoursComparison {
  readonly planned: Decimal;
  readonly actual: Decimal;
  readonly byCostCode: PlannedAndActual[];
}

/**
 * Planned against actual hours by cost code: planned codes in the plan's order, then those that nobody planned, by
 * code, so that the same job always reads the same whatever order its time entries come in.
 */
export function compareHours(planned: readonly CostCodeHours[], actual: readonly CostCodeHours[]): HoursComparison {
  const plan = sumByCostCode(planned);
  const done = sumByCostCode(actual);
  const unplanned = [...done.keys()].filter((code) => !plan.has(code)).sort(byCodeUnit);
  const zero = new Decimal(0);
  const byCostCode = [...plan.keys(), ...unplanned].map((costCode) => ({
    costCode,
    planned: plan.get(costCode) ?? zero,
    actual: done.get(costCode) ?? zero,
  }));
  return {
    planned: sumDecimals(byCostCode.map((code) => code.planned)),
    actual: sumDecimals(byCostCode.map((code) => code.actual)),
    byCostCode,
  };
}

function sumByCostCode(rows: readonly CostCodeHours[]): Map<string, Decimal> {
  const sums = new Map<string, Decimal>();
  for (const { costCode, hours } of rows) sums.set(costCode, (sums.get(costCode) ?? new Decimal(0)).plus(hours));
  return sums;
}

/** Not `localeCompare`: the order would depend on the machine's language. */
function byCodeUnit(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
