import type { Decimal } from '../../../domain/decimal.js';
import { type CutPlan, cutPlans } from '../../../domain/trade/liner/index.js';
import type { PartEntity } from '../../catalog/index.js';
import { cheaperFirst, type Choice, fit, type Fitting, lineOf, type RuledOut } from '../choice.js';
import { type CatalogRoll, type Sheet, sheetGoods, stripLine } from './rolls.js';
import { counted, feet, inches, squareFeet } from './shown.js';

export interface Seam {
  readonly leaks: boolean;
  readonly pricePerM: Decimal;
}

/** Pairs go with the square of the rolls; the cheapest alone are those that a mix is worth while with. */
const MOST_MIXED = 8;
/** Nobody mixes rolls over so many strips, and trying every number of them would take seconds. */
const MOST_STRIPS_MIXED = 200;
const SEAMS_LEAK = 'Every seam is a place to leak: one sheet, or a liner joined in a workshop, may be worth its price. Make seams by the rules of the maker.';
const MADE_TO_SIZE = 'it is sold by area and the catalog has no roll width, so it is taken as one sheet made to size; seams and waste are not counted';

/**
 * The cheapest cuts of a sheet from the catalog's rolls: each roll alone, and two of them mixed where that costs less than
 * either alone. Sheets made to size come after all that is cut, as nobody has counted what they waste.
 * @param lapM of a seam
 * @param seam whether it can leak, and what a metre of it costs, by which cuts are compared
 */
export function chooseSheets(parts: readonly PartEntity[], sheet: Sheet, lapM: number, seam: Seam): Choice {
  const pricePerM = seam.pricePerM.toNumber();
  const [rolls, made, ruledOut]: [CatalogRoll[], Fitting[], RuledOut[]] = [[], [], []];
  for (const part of parts) {
    const goods = sheetGoods(part, sheet, lapM);
    if ('reason' in goods) ruledOut.push(goods);
    else if ('roll' in goods) rolls.push(goods);
    else made.push(fit([lineOf(part, goods.madeToSize)], `A sheet of ${sized(sheet)}; ${MADE_TO_SIZE}.`));
  }
  const laid = (plan: CutPlan, from: readonly CatalogRoll[]): Fitting => {
    const widestFirst = [...plan.strips].sort((a, b) => (from[b.roll] as CatalogRoll).roll.widthM - (from[a.roll] as CatalogRoll).roll.widthM);
    const goods = fit(widestFirst.map((strip) => stripLine(from[strip.roll] as CatalogRoll, strip)), whyOf({ ...plan, strips: widestFirst }, from, sheet, lapM), seam.leaks && plan.seams > 0 ? [SEAMS_LEAK] : []);
    return { ...goods, cost: goods.cost.plus(seam.pricePerM.times(plan.seamLengthM)) };
  };
  const alone = rolls.map((one) => ({ one, fitting: cutPlans(sheet, [one.roll], lapM, pricePerM).map((plan) => laid(plan, [one])).sort(cheaperFirst)[0] as Fitting }));
  alone.sort((a, b) => cheaperFirst(a.fitting, b.fitting));
  const narrowestM = Math.min(...alone.map(({ one }) => one.roll.widthM));
  const few = Math.max(sheet.lengthM, sheet.widthM) > MOST_STRIPS_MIXED * narrowestM ? [] : alone.slice(0, MOST_MIXED);
  const pair = ({ strips }: CutPlan): number => (strips[0]?.roll ?? 0) * MOST_MIXED + (strips[1]?.roll ?? 0);
  const mixes = cutPlans(sheet, few.map(({ one }) => one.roll), lapM, pricePerM).filter(({ strips }) => strips.length > 1);
  const bestMixes = mixes.filter((plan, i) => mixes.findIndex((other) => pair(other) === pair(plan)) === i).flatMap((plan): Fitting[] => {
    const mixed = laid(plan, few.map(({ one }) => one));
    return plan.strips.every(({ roll }) => few[roll]?.fitting.cost.gt(mixed.cost)) ? [mixed] : [];
  });
  return { fitting: [...[...alone.map(({ fitting }) => fitting), ...bestMixes].sort(cheaperFirst), ...made.sort(cheaperFirst)], ruledOut };
}

function whyOf(plan: CutPlan, from: readonly CatalogRoll[], sheet: Sheet, lapM: number): string {
  const strips = plan.strips.map(({ roll, count }) => `${count} of ${from[roll]?.part.name ?? ''}`).join(' and ');
  const count = plan.strips.reduce((sum, strip) => sum + strip.count, 0);
  const seams = plan.seams === 0 ? 'no seam' : `${counted(plan.seams, 'seam')}, ${feet(plan.seamLengthM)} in all, lapped ${inches(lapM)}`;
  const waste = `${squareFeet(Math.max(plan.wasteM2, 0))} (${((Math.max(plan.wasteM2, 0) / plan.boughtM2) * 100).toFixed(0)} %) is waste`;
  return `A sheet of ${sized(sheet)}, cut as ${counted(count, 'strip')} ${feet(plan.stripLengthM)} long: ${strips}; ${seams}; of ${squareFeet(plan.boughtM2)} bought ${waste}.`;
}

function sized({ lengthM, widthM }: Sheet): string {
  return `${feet(lengthM)} × ${feet(widthM)}`;
}
