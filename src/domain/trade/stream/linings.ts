/** Manning's n of a bed: least, usual and most. */
export interface LiningRoughness {
  readonly least: number;
  readonly usual: number;
  readonly most: number;
  /** The usual stone of a bed of loose stone, m (common practice); null where the stones are set in mortar. */
  readonly usualStoneM: number | null;
  /** Above this velocity, m/s, loose stone may move (Fortier & Scobey 1926: fine gravel 2.5 ft/s, cobbles 5, from memory). */
  readonly movesAbove: number | null;
}

const FOOT = 0.3048;

/**
 * Rows of Chow's table of Manning's n: concrete bottom with sides of dressed stone in mortar; with sides of random
 * stone in mortar; excavated channel in gravel, uniform and clean; excavated channel with cobble bottom and clean sides;
 * mountain stream with cobbles and large boulders.
 * @see Chow, Open-Channel Hydraulics, 1959, Table 5-6, as reproduced in university and agency tables (read)
 */
export const LININGS = {
  'smooth-stone': { least: 0.015, usual: 0.017, most: 0.02, usualStoneM: null, movesAbove: null },
  'stone-in-mortar': { least: 0.017, usual: 0.02, most: 0.024, usualStoneM: null, movesAbove: null },
  gravel: { least: 0.022, usual: 0.025, most: 0.03, usualStoneM: 0.0127, movesAbove: 2.5 * FOOT },
  cobble: { least: 0.03, usual: 0.04, most: 0.05, usualStoneM: 0.1016, movesAbove: 5 * FOOT },
  boulders: { least: 0.04, usual: 0.05, most: 0.07, usualStoneM: 0.254, movesAbove: null },
} as const satisfies Record<string, LiningRoughness>;
export type Lining = keyof typeof LININGS;
export const LINING_NAMES = Object.keys(LININGS) as Lining[];
