import { plain, type Decimal } from '../../../../domain/decimal.js';
import type { CutPlan, Roll } from '../../../../domain/trade/liner/index.js';
import type { Working } from '../../../../domain/working.js';

/** How the first plan adds up. */
export function cutWorking(plan: CutPlan, sheet: { lengthM: number; widthM: number }, rolls: readonly Roll[], overlapM: number, cost: Decimal | null, currency: string | null): Working {
  return {
    rule: 'strips that together cover the sheet, each seam taking its overlap; bought = sheet + overlaps + waste',
    inputs: [
      { name: 'sheet length', value: plain(sheet.lengthM), unit: 'm' },
      { name: 'sheet width', value: plain(sheet.widthM), unit: 'm' },
      { name: 'seam overlap', value: plain(overlapM), unit: 'm' },
    ],
    steps: [
      ...plan.strips.map(({ roll, count, pieces, boughtM }) => ({
        label: `strips of ${rolls[roll]?.name ?? ''}`,
        expression: `${count} × ${plain(plan.stripLengthM)} m, each of ${pieces} pieces, from ${plain(rolls[roll]?.widthM ?? 0)} m of width`,
        value: plain(boughtM),
        unit: 'm',
      })),
      { label: 'waste', expression: `${plain(plan.boughtM2)} − ${plain(sheet.lengthM)} × ${plain(sheet.widthM)} − ${plain(plan.overlapM2)}`, value: plain(plan.wasteM2), unit: 'm2' },
      ...(cost === null || currency === null ? [] : [{ label: 'cost', expression: 'goods and seams, each rounded', value: cost.toFixed(), unit: currency }]),
    ],
  };
}
