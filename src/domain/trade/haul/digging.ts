/**
 * Digging by hand, m3 in place per labor-hour: in small pits, as a pond is, and in trenches up to 1.5 m deep, as for pipe.
 * @see Guild of Project Controls compendium, "Excavate & reduce levels", hand dig in small pits and in trenches
 */
export const HAND_DIGGING_M3_PER_H = {
  loose: 0.5,
  firm: 0.43,
  gravel: 0.34,
  clay: 0.35,
  'boulder-clay': 0.28,
  'trench-loose': 0.66,
  'trench-firm': 0.57,
  'trench-clay': 0.46,
  'trench-boulder-clay': 0.38,
} as const;

export type HandDigging = keyof typeof HAND_DIGGING_M3_PER_H;
export const HAND_DIGGINGS = Object.keys(HAND_DIGGING_M3_PER_H) as HandDigging[];

export interface Excavator {
  readonly bucketM3: number;
  /** How full a bucket comes up, as a share. */
  readonly fill: number;
  /** Working minutes of an hour, as a share. */
  readonly efficiency: number;
  readonly cycleS: number;
}

/** Loose m3 per hour of an excavator: 3600 × bucket × fill × efficiency / cycle. */
export function excavatorLooseM3PerH({ bucketM3, fill, efficiency, cycleS }: Excavator): number {
  return (3600 * bucketM3 * fill * efficiency) / cycleS;
}
