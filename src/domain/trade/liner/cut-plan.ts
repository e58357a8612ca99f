import { DomainError } from '../../errors.js';
import { cheapestMix, stripsToCover } from './mix.js';
import { cutStrips, type PricedRoll, type StripSet } from './strips.js';

/** So that a sheet takes hundreds of strips at most, and a seam is no strip of its own. */
const LEAST_WIDTH = 4;
/** A strip is counted as covering its place when it is this share short of it: binary dust. */
const DUST = 1e-8;

export interface CutStrip extends StripSet {
  /** Into the list of rolls. */
  readonly roll: number;
  readonly count: number;
}

export interface CutPlan {
  /** Which way the strips run. */
  readonly direction: 'along-length' | 'along-width';
  readonly strips: readonly CutStrip[];
  readonly stripLengthM: number;
  /** Seams between strips, and across a strip that is longer than its roll. */
  readonly seams: number;
  readonly seamLengthM: number;
  readonly boughtM2: number;
  readonly overlapM2: number;
  /** Bought = sheet + overlaps + waste; m2. */
  readonly wasteM2: number;
  /** Goods and seams; the bought area where there are no prices. */
  readonly rank: number;
}

/**
 * The cheapest ways to make one sheet from rolls, cheapest first: strips along either side, of one kind of roll or of two
 * mixed, the best mix of each pair. Without prices the least area bought comes first; of equal ones the shorter seams.
 * @param sheet m, both above 0
 * @param overlapM of a seam, 0 or more
 * @param seamPricePerM in the currency of the rolls, 0 or more
 * @returns at least one plan
 * @throws DomainError at /rolls/i/width or /rolls/i/length of a roll less than four seams wide or long, at /rolls/i/price when
 *   only some have prices
 */
export function cutPlans(sheet: { readonly lengthM: number; readonly widthM: number }, rolls: readonly PricedRoll[], overlapM: number, seamPricePerM: number): CutPlan[] {
  rolls.forEach((roll, i) => {
    if (!(roll.widthM >= overlapM * LEAST_WIDTH)) throw DomainError.at(`/rolls/${i}/width`, 'A roll must be at least four times as wide as a seam overlaps.');
    if (!(roll.lengthM >= overlapM * LEAST_WIDTH)) throw DomainError.at(`/rolls/${i}/length`, 'A roll must be at least four times as long as a seam overlaps.');
    if ((roll.pricePerM === null) !== (rolls[0]?.pricePerM === null)) throw DomainError.at(`/rolls/${i}/price`, 'Give every roll a price, or none.');
  });
  const plans: CutPlan[] = [];
  for (const direction of ['along-length', 'along-width'] as const) {
    const [along, across] = direction === 'along-length' ? [sheet.lengthM, sheet.widthM] : [sheet.widthM, sheet.lengthM];
    const task = { alongM: along, acrossM: across, overlapM, seamPricePerM };
    const plan = (counts: readonly (readonly [roll: number, count: number])[]): CutPlan => laid(direction, along, across, counts, rolls, overlapM, seamPricePerM);
    rolls.forEach((roll, i) => {
      plans.push(plan([[i, stripsToCover(roll, across - overlapM, overlapM) || 1]]));
      for (let j = i + 1; j < rolls.length; j += 1) {
        const mix = cheapestMix(roll, rolls[j] as PricedRoll, task);
        if (mix !== null) plans.push(plan([[i, mix[0]], [j, mix[1]]]));
      }
    });
  }
  return plans.sort(cheaperFirst);
}

function widthOf(rolls: readonly PricedRoll[], index: number): number {
  return (rolls[index] as PricedRoll).widthM;
}

function cheaperFirst(a: CutPlan, b: CutPlan): number {
  return a.rank - b.rank || a.seamLengthM - b.seamLengthM || a.seams - b.seams;
}

function laid(direction: CutPlan['direction'], along: number, across: number, counts: readonly (readonly [number, number])[], rolls: readonly PricedRoll[], overlapM: number, seamPricePerM: number): CutPlan {
  const strips = counts.map(([roll, count]): CutStrip => ({ roll, count, ...cutStrips(rolls[roll] as PricedRoll, count, along, overlapM) }));
  const sum = (of: (strip: CutStrip) => number): number => strips.reduce((total, strip) => total + of(strip), 0);
  const between = sum(({ count }) => count) - 1;
  const crossings = (strip: CutStrip): number => strip.count * (strip.pieces - 1);
  const seamLengthM = between * along + sum((strip) => crossings(strip) * widthOf(rolls, strip.roll));
  const boughtM2 = sum((strip) => strip.boughtM * widthOf(rolls, strip.roll));
  const overlapM2 = seamLengthM * overlapM;
  const wasteM2 = boughtM2 - along * across - overlapM2;
  const goods = sum((strip) => strip.boughtM * ((rolls[strip.roll] as PricedRoll).pricePerM ?? widthOf(rolls, strip.roll)));
  return {
    direction,
    strips,
    stripLengthM: along,
    seams: between + sum(crossings),
    seamLengthM,
    boughtM2,
    overlapM2,
    // A cut without waste must not show a little less than none.
    wasteM2: Math.abs(wasteM2) < DUST * boughtM2 ? 0 : wasteM2,
    rank: goods + seamLengthM * seamPricePerM,
  };
}
