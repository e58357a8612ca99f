import { GRAVITY } from './water.js';

/**
 * Loss of a fitting. `times` is n in K = n · f_T, where f_T belongs to the pipe's size; `fixed` is K itself.
 * Elbows, tees, gate and ball valve: a table of the Crane TP-410 type, as reproduced in print. Swing check, entrances
 * and exit: from memory of the same publication.
 */
const FITTINGS = {
  'elbow-90': { times: 30 },
  'elbow-45': { times: 16 },
  'tee-through': { times: 20 },
  'tee-branch': { times: 60 },
  'gate-valve': { times: 8 },
  'ball-valve': { times: 3 },
  'swing-check': { times: 100 },
  'entrance-projecting': { fixed: 0.78 },
  'entrance-flush': { fixed: 0.5 },
  exit: { fixed: 1 },
} as const satisfies Record<string, { times: number } | { fixed: number }>;

export type FittingKind = keyof typeof FITTINGS;
export const FITTING_KINDS = Object.keys(FITTINGS) as FittingKind[];

/** Up to which inner diameter, in m, a row of the fitting table holds: halfway to the next pipe size. */
const SIZE_ROWS = [
  { upTo: 0.0308, factor: 0.023 },
  { upTo: 0.038, factor: 0.022 },
  { upTo: 0.0467, factor: 0.021 },
  { upTo: 0.0576, factor: 0.019 },
  { upTo: 0.0901, factor: 0.018 },
  { upTo: Infinity, factor: 0.017 },
] as const;

/** Inner diameters in m that the fitting table covers: 1 to 4 in pipe. */
export const FITTING_TABLE_M = { min: 0.024, max: 0.105 } as const;

/** K of one fitting, on the velocity in a pipe of this inner diameter (m). The table is for 1 to 4 in pipe. */
export function fittingLoss(kind: FittingKind, diameter: number): number {
  const fitting = FITTINGS[kind];
  if ('fixed' in fitting) return fitting.fixed;
  const row = SIZE_ROWS.find(({ upTo }) => diameter <= upTo);
  return fitting.times * (row?.factor ?? NaN);
}

/** Minor loss ΣK · V²/2g for each (m3/s)²: m of head. */
export function minorResistance(sumOfK: number, diameter: number): number {
  const area = (Math.PI * diameter * diameter) / 4;
  return sumOfK / (2 * GRAVITY * area * area);
}
