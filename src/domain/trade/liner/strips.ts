/** A roll of liner or underlayment. */
export interface Roll {
  readonly name: string;
  /** m, above the seam overlap */
  readonly widthM: number;
  /** m, above the seam overlap */
  readonly lengthM: number;
  /** Sold only as a whole roll; else by the length that is cut off. */
  readonly wholeOnly: boolean;
}

/** A roll with what is only compared here; the exact cost of a plan is `planCost`. */
export interface PricedRoll extends Roll {
  /** Price of its goods for each metre that is bought, in any currency, 0 or more; null for all rolls without prices. */
  readonly pricePerM: number | null;
}

/** Strips of one length cut from one kind of roll. */
export interface StripSet {
  /** What is cut off, cross-seam overlaps included; m. */
  readonly cutM: number;
  /** What is bought; m. */
  readonly boughtM: number;
  readonly rolls: number;
  /** Pieces that each strip is joined from. */
  readonly pieces: number;
}

/** How one strip is cut from a roll. */
export interface StripCut {
  readonly pieces: number;
  /** With the overlaps of the seams across it; m. */
  readonly stripM: number;
  /** Strips whose last pieces share a roll. */
  readonly perRoll: number;
}

/**
 * A strip longer than the roll is joined from whole rolls and one remainder.
 * @param alongM length of a strip, above 0
 * @param overlapM of a seam, 0 or more and less than the roll is long
 */
export function stripCut(lengthM: number, alongM: number, overlapM: number): StripCut {
  const pieces = alongM <= lengthM * (1 + 1e-9) ? 1 : Math.ceil((alongM - overlapM) / (lengthM - overlapM) - 1e-9);
  const stripM = alongM + (pieces - 1) * overlapM;
  const lastM = stripM - (pieces - 1) * lengthM;
  return { pieces, stripM, perRoll: Math.max(1, Math.floor(lengthM / lastM + 1e-9)) };
}

/** The rolls that `count` strips take; the remainders of several strips share one. */
export function rollsFor({ pieces, perRoll }: StripCut, count: number): number {
  return count * (pieces - 1) + Math.ceil(count / perRoll);
}

/** What is bought for `count` strips; m. */
export function boughtFor(roll: Pick<Roll, 'lengthM' | 'wholeOnly'>, cut: StripCut, count: number): number {
  return roll.wholeOnly ? rollsFor(cut, count) * roll.lengthM : count * cut.stripM;
}

/** All about `count` strips from one kind of roll. */
export function cutStrips(roll: Pick<Roll, 'lengthM' | 'wholeOnly'>, count: number, alongM: number, overlapM: number): StripSet {
  const cut = stripCut(roll.lengthM, alongM, overlapM);
  return { cutM: count * cut.stripM, boughtM: boughtFor(roll, cut, count), rolls: rollsFor(cut, count), pieces: cut.pieces };
}
