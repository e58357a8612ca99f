import type { PartBody } from '../../catalog/index.js';

export interface DemoPart extends Omit<PartBody, 'unitCost'> {
  readonly unitCost: string;
  /** What it cost before the supplier's last list, where that is known. */
  readonly formerCost?: string;
}

/** Costs are invented, in the company's currency. */
export type PartRow = readonly [sku: string, name: string, unitCost: string, markupPercent: string];

export function counted(rows: readonly PartRow[], taxCategory = 'materials'): DemoPart[] {
  return sold(rows, 'each', '1', taxCategory);
}

/** Parts that are sold by a unit of measure, in packs of some units. */
export function sold(rows: readonly PartRow[], unit: DemoPart['unit'], packSize: string, taxCategory = 'materials'): DemoPart[] {
  return rows.map(([sku, name, unitCost, markupPercent]) => ({ sku, name, unit, unitCost, markupPercent, packSize, taxCategory }));
}
