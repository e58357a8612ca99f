import { studentT95 } from '../../statistics/index.js';

/** A volume that is surer than this needs no more readings: half of its 90 % interval as a share of it. */
const WANTED_HALF_WIDTH = 0.15;

export interface VolumeError {
  /** s / √n × surface, m3. */
  readonly standardErrorM3: number;
  /** Student's t for a two-sided 90 % interval with n - 1 degrees of freedom. */
  readonly t: number;
  /** Half of the 90 % interval, m3. */
  readonly halfWidthM3: number;
  /** The same as a share of the volume; null when there is no sediment. */
  readonly halfWidthShare: number | null;
  /** How many more readings make the half width at most 15 %, if they vary as the present ones do. */
  readonly extraReadings: number;
}

/**
 * How sure a volume is that comes from surface × mean of the readings, the readings taken as random. Readings spread
 * evenly over the pond do better, so the error is stated on the careful side; the surface counts as known.
 * @param thicknessesM of all readings
 * @returns null for a single reading, which says nothing of how they vary
 * @see any text on survey sampling: standard error of a mean s/√n, interval by Student's t (from memory)
 */
export function volumeError(thicknessesM: readonly number[], areaM2: number): VolumeError | null {
  const n = thicknessesM.length;
  if (n < 2) return null;
  const mean = thicknessesM.reduce((a, b) => a + b, 0) / n;
  const deviation = Math.sqrt(thicknessesM.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (n - 1));
  const halfShare = (count: number): number => (studentT95(count - 1) * deviation) / (Math.sqrt(count) * mean);
  const standardErrorM3 = (deviation / Math.sqrt(n)) * areaM2;
  const t = studentT95(n - 1);
  return {
    standardErrorM3,
    t,
    halfWidthM3: t * standardErrorM3,
    halfWidthShare: mean > 0 ? halfShare(n) : null,
    extraReadings: mean > 0 ? fewest(n, halfShare) - n : 0,
  };
}

/** The fewest readings from `n` on that are enough; the width falls with every reading, so a count is found by halving. */
function fewest(n: number, halfShare: (count: number) => number): number {
  if (halfShare(n) <= WANTED_HALF_WIDTH) return n;
  let [tooFew, enough] = [n, 2 * n];
  while (halfShare(enough) > WANTED_HALF_WIDTH) [tooFew, enough] = [enough, 2 * enough];
  while (enough - tooFew > 1) {
    const middle = Math.floor((tooFew + enough) / 2);
    if (halfShare(middle) > WANTED_HALF_WIDTH) tooFew = middle;
    else enough = middle;
  }
  return enough;
}

/** That the readings are too few for the volume by the mean, and how many are missing. */
export function errorWarnings(error: VolumeError | null): string[] {
  if (error === null) return ['A single reading says nothing of how sure the volume is; take more.'];
  if (error.halfWidthShare === null || error.halfWidthShare <= WANTED_HALF_WIDTH) return [];
  // Rounded up: 15.2 % shown as 15 would be no wider than what is wanted.
  const percent = Math.ceil(100 * error.halfWidthShare);
  const more = error.extraReadings === 1 ? '1 more reading' : `about ${error.extraReadings} more readings`;
  return [`The 90 % interval of the sediment by the mean is ±${percent} %, wider than ±15 %: take ${more}, spread evenly over the pond.`];
}
