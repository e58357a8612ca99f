import type { Unit } from '../quantity/index.js';
import type { Point } from './outline.js';

/** One rod reading, downwards from the full-water line. */
export interface ProbeReading {
  /** Where, in the outline's unit and axes. */
  readonly at?: Point | undefined;
  /** Depth to the top of the soft sediment. */
  readonly toSediment: number;
  /** Depth to the hard bottom; not less than `toSediment`. */
  readonly toBottom: number;
}

export interface Probes {
  readonly unit: Unit;
  readonly readings: readonly ProbeReading[];
}

export const MAX_READINGS = 5_000;
/** Deeper than any rod reaches: a wrong unit. Metres. */
export const MAX_DEPTH_M = 30;
