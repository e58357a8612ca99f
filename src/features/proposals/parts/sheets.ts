import { Decimal } from '../../../domain/decimal.js';
import { toSi } from '../../../domain/quantity/index.js';
import type { LinerSheet } from '../../../domain/trade/liner/index.js';
import type { PartEntity } from '../../catalog/index.js';
import { type Choice, choose, inPartUnit, type Verdict } from '../choice.js';

type Sheet = Pick<LinerSheet, 'lengthM' | 'widthM'>;

/** Liners, or underlayments, that cover the sheet. */
export function chooseSheets(parts: readonly PartEntity[], sheet: Sheet): Choice {
  return choose(parts, (part) => covers(part, sheet));
}

function covers(part: PartEntity, sheet: Sheet): Verdict {
  const areaM2 = sheet.lengthM * sheet.widthM;
  const size = `${feet(sheet.lengthM)} × ${feet(sheet.widthM)} ft`;
  const { strips, seams } = stripsOf(part, sheet);
  const why = `A sheet of ${size}${seams === 0 ? '' : `, in ${strips} strips with ${seams} seam(s): each seam takes an overlap more`}.`;
  const byArea = inPartUnit(areaM2, 'area', part);
  if (byArea !== null) return { quantity: byArea, why };
  const rollM2 = rollArea(part);
  if (part.unit === 'each' && rollM2 !== null) return { quantity: new Decimal(Math.ceil(areaM2 / rollM2 - 1e-9)), why: `${why} Whole rolls, by area.` };
  return { reason: `It is sold by ${part.unit}, and its roll width and length are not in the catalog.` };
}

function stripsOf({ attributes }: PartEntity, sheet: Sheet): { strips: number; seams: number } {
  const width = attributes !== null && 'rollWidth' in attributes && attributes.rollWidth ? toSi(attributes.rollWidth) : null;
  const strips = width === null ? 1 : Math.ceil(Math.min(sheet.lengthM, sheet.widthM) / width - 1e-9);
  return { strips, seams: strips - 1 };
}

function rollArea({ attributes }: PartEntity): number | null {
  if (attributes === null || !('rollWidth' in attributes) || !attributes.rollWidth || !attributes.rollLength) return null;
  return toSi(attributes.rollWidth) * toSi(attributes.rollLength);
}

function feet(metres: number): string {
  return (metres / 0.3048).toFixed(1);
}
