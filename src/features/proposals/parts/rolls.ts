import { Decimal } from '../../../domain/decimal.js';
import { kindOf, type Quantity, toSi } from '../../../domain/quantity/index.js';
import type { CutStrip, LinerSheet, PricedRoll } from '../../../domain/trade/liner/index.js';
import type { PartEntity } from '../../catalog/index.js';
import { inPartUnit, type Line, lineOf } from '../choice.js';

export type Sheet = Pick<LinerSheet, 'lengthM' | 'widthM'>;

/** A part of the catalog as a roll that can be cut. */
export interface CatalogRoll {
  readonly part: PartEntity;
  readonly roll: PricedRoll;
}

/** What a part is for a sheet: a roll, goods that are made to any size, or no use. */
export type SheetGoods = CatalogRoll | { readonly part: PartEntity; readonly madeToSize: Decimal } | { readonly part: PartEntity; readonly reason: string };

/** As the cut asks it of a roll. */
const LEAST_LAPS = 4;

export function sheetGoods(part: PartEntity, sheet: Sheet, lapM: number): SheetGoods {
  const sold = kindOf(part.unit);
  const { widthM, lengthM } = rollSize(part);
  if (sold === 'area' && widthM === null) return { part, madeToSize: inPartUnit(sheet.lengthM * sheet.widthM, 'area', part) as Decimal };
  if (sold !== 'area' && sold !== 'length' && sold !== 'count') return { part, reason: `It is sold by ${part.unit}; a sheet is bought by area, by length or by the roll.` };
  if (widthM === null || (sold === 'count' && lengthM === null)) return { part, reason: `It is sold by ${part.unit}, and the width and length of its roll are not in the catalog.` };
  // Cut off by the foot or the square foot, a roll of unknown length is taken to be long enough.
  const longM = lengthM ?? Math.max(sheet.lengthM, sheet.widthM) + LEAST_LAPS * lapM;
  if (widthM < LEAST_LAPS * lapM || longM < LEAST_LAPS * lapM) return { part, reason: 'Its roll is not four times as wide and long as a seam laps over.' };
  const inUnit = toSi({ value: 1, unit: part.unit });
  const unitsPerM = sold === 'count' ? 1 / longM : (sold === 'area' ? widthM : 1) / inUnit;
  return { part, roll: { name: part.name, widthM, lengthM: longM, wholeOnly: sold === 'count', pricePerM: part.unitCost.times(unitsPerM).toNumber() } };
}

/** What is bought for the strips of a roll. */
export function stripLine({ part, roll }: CatalogRoll, strip: CutStrip): Line {
  const bySize = inPartUnit(strip.boughtM * roll.widthM, 'area', part) ?? inPartUnit(strip.boughtM, 'length', part);
  return lineOf(part, bySize ?? new Decimal(strip.rolls));
}

function rollSize({ attributes }: PartEntity): { widthM: number | null; lengthM: number | null } {
  if (attributes?.kind !== 'liner' && attributes?.kind !== 'underlayment') return { widthM: null, lengthM: null };
  const inM = (size: Quantity | null | undefined): number | null => (size ? toSi(size) : null);
  return { widthM: inM(attributes.rollWidth), lengthM: inM(attributes.rollLength) };
}
