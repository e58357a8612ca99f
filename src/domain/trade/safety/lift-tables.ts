export type LiftDuration = 'up-to-1-h' | '1-to-2-h' | '2-to-8-h';
export type Coupling = 'good' | 'fair' | 'poor';

export const LIFT_DURATIONS: readonly LiftDuration[] = ['up-to-1-h', '1-to-2-h', '2-to-8-h'];
export const COUPLINGS: readonly Coupling[] = ['good', 'fair', 'poor'];

/** Hands below this height take the lower column; in. */
const LOW_HANDS_IN = 30;

/**
 * Lifts a minute, then for each duration the multiplier with the hands below and from 30 in: Table 5, read in a public
 * transcription of both columns, another of the upper one, and a worksheet that has the first rows; all agree.
 */
const FREQUENCY: readonly (readonly [number, ...(readonly [number, number])[]])[] = [
  [0.2, [1, 1], [0.95, 0.95], [0.85, 0.85]],
  [0.5, [0.97, 0.97], [0.92, 0.92], [0.81, 0.81]],
  [1, [0.94, 0.94], [0.88, 0.88], [0.75, 0.75]],
  [2, [0.91, 0.91], [0.84, 0.84], [0.65, 0.65]],
  [3, [0.88, 0.88], [0.79, 0.79], [0.55, 0.55]],
  [4, [0.84, 0.84], [0.72, 0.72], [0.45, 0.45]],
  [5, [0.8, 0.8], [0.6, 0.6], [0.35, 0.35]],
  [6, [0.75, 0.75], [0.5, 0.5], [0.27, 0.27]],
  [7, [0.7, 0.7], [0.42, 0.42], [0.22, 0.22]],
  [8, [0.6, 0.6], [0.35, 0.35], [0.18, 0.18]],
  [9, [0.52, 0.52], [0.3, 0.3], [0, 0.15]],
  [10, [0.45, 0.45], [0.26, 0.26], [0, 0.13]],
  [11, [0.41, 0.41], [0, 0.23], [0, 0]],
  [12, [0.37, 0.37], [0, 0.21], [0, 0]],
  [13, [0, 0.34], [0, 0], [0, 0]],
  [14, [0, 0.31], [0, 0], [0, 0]],
  [15, [0, 0.28], [0, 0], [0, 0]],
];

/**
 * The frequency multiplier; between two rows that of the faster one, which is the careful choice. 0 above 15 a minute.
 * @see NIOSH 94-110, Table 5 (read as transcribed)
 */
export function frequencyMultiplier(liftsPerMinute: number, duration: LiftDuration, handsIn: number): number {
  const row = FREQUENCY.find(([rate]) => liftsPerMinute <= rate);
  const pair = row?.[LIFT_DURATIONS.indexOf(duration) + 1];
  return Array.isArray(pair) ? ((handsIn < LOW_HANDS_IN ? pair[0] : pair[1]) as number) : 0;
}

/**
 * A fair hold costs 5 % with the hands low. One public transcription has its two columns the wrong way round; a
 * university lecture and the manual's own example have them so.
 * @see NIOSH 94-110, Table 7 (read as transcribed)
 */
export function couplingMultiplier(coupling: Coupling, handsIn: number): number {
  if (coupling === 'poor') return 0.9;
  return coupling === 'fair' && handsIn < LOW_HANDS_IN ? 0.95 : 1;
}
