import { boughtFor, stripCut, type PricedRoll } from './strips.js';

/** Beyond what sums of a few hundred figures lose to rounding. */
const SURELY_MORE = 1 + 1e-9;

export interface MixTask {
  /** Length of a strip; m. */
  readonly alongM: number;
  /** What the strips cover side by side; m. */
  readonly acrossM: number;
  readonly overlapM: number;
  readonly seamPricePerM: number;
}

/** The strips of one roll that cover what is left; each covers its width less one overlap. 0 when nothing is left. */
export function stripsToCover(roll: PricedRoll, leftM: number, overlapM: number): number {
  return Math.max(0, Math.ceil(leftM / (roll.widthM - overlapM) - 1e-9));
}

/**
 * How many strips of each of two rolls cover the sheet cheapest, at least one of each; of equally cheap ones the shorter
 * seams, then the fewer strips of the first. Null when one strip of the first already covers it. The numbers of strips of
 * the first are tried from the side of the roll that covers a metre cheaper, until no further one can win; the figures are
 * plain numbers here: a list of plans would take longer than all the rest.
 */
export function cheapestMix(first: PricedRoll, second: PricedRoll, { alongM, acrossM, overlapM, seamPricePerM }: MixTask): readonly [number, number] | null {
  const [cutA, cutB] = [stripCut(first.lengthM, alongM, overlapM), stripCut(second.lengthM, alongM, overlapM)];
  const [priceA, priceB] = [first.pricePerM ?? first.widthM, second.pricePerM ?? second.widthM];
  const all = stripsToCover(first, acrossM - overlapM, overlapM);
  // What a strip costs at least: whole rolls may add to it.
  const [leastA, leastB] = [cutA.stripM * priceA, cutB.stripM * priceB].map((goods) => goods + alongM * seamPricePerM) as [number, number];
  const [widthA, widthB] = [first.widthM - overlapM, second.widthM - overlapM];
  const atLeast = (a: number): number => a * leastA + ((acrossM - overlapM - a * widthA) / widthB) * leastB - alongM * seamPricePerM;
  const upward = leastA * widthB >= leastB * widthA;
  let best: readonly [number, number] | null = null;
  let [least, shortest] = [Infinity, Infinity];
  for (let tried = 1; tried < all; tried += 1) {
    const a = upward ? tried : all - tried;
    if (atLeast(a) > least * SURELY_MORE) break;
    const b = stripsToCover(second, acrossM - overlapM - a * widthA, overlapM);
    const seamM = (a + b - 1) * alongM + a * (cutA.pieces - 1) * first.widthM + b * (cutB.pieces - 1) * second.widthM;
    const rank = boughtFor(first, cutA, a) * priceA + boughtFor(second, cutB, b) * priceB + seamM * seamPricePerM;
    if (b > 0 && (rank < least || (rank === least && (seamM < shortest || (seamM === shortest && !upward))))) {
      best = [a, b];
      [least, shortest] = [rank, seamM];
    }
  }
  return best;
}
