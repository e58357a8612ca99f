import { Decimal } from '../../domain/decimal.js';

/** What a quote plans for a cost code. */
export interface PlannedWork {
  readonly costCode: string;
  readonly hours: Decimal;
  readonly cost: Decimal;
  readonly amount: Decimal;
}

/** One line a cost code, in the order in which the codes first come: several lines of a quote may share a code. */
export function planByCostCode(lines: readonly PlannedWork[]): PlannedWork[] {
  const plan = new Map<string, PlannedWork>();
  for (const { costCode, hours, cost, amount } of lines) {
    const before = plan.get(costCode);
    const zero = new Decimal(0);
    plan.set(costCode, {
      costCode,
      hours: (before?.hours ?? zero).plus(hours),
      cost: (before?.cost ?? zero).plus(cost),
      amount: (before?.amount ?? zero).plus(amount),
    });
  }
  return [...plan.values()];
}
