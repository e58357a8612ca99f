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

/**
 * How many rolls `count` strips take. A strip longer than the roll is joined from whole rolls and one remainder, and the
 * remainders of several strips share a roll.
 * @param alongM length of a strip, above 0
 * @param overlapM of a seam, 0 or more
 */
export function cutStrips(roll: Pick<Roll, 'lengthM' | 'wholeOnly'>, count: number, alongM: number, overlapM: number): StripSet {
  const pieces = alongM <= roll.lengthM * (1 + 1e-9) ? 1 : Math.ceil((alongM - overlapM) / (roll.lengthM - overlapM) - 1e-9);
  const stripM = alongM + (pieces - 1) * overlapM;
  const lastM = stripM - (pieces - 1) * roll.lengthM;
  const rolls = count * (pieces - 1) + Math.ceil(count / Math.max(1, Math.floor(roll.lengthM / lastM + 1e-9)));
  const cutM = count * stripM;
  return { cutM, boughtM: roll.wholeOnly ? rolls * roll.lengthM : cutM, rolls, pieces };
}
