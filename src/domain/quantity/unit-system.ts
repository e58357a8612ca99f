import type { Unit } from './unit-table.js';

/** Which units a company reads its documents in. Entered units are kept beside; this is display only. */
export type UnitSystem = 'us' | 'metric';

/** What a figure is for decides its unit: a pond's water is read in gallons, its sediment in cubic yards. */
export type DisplayUse = 'length' | 'depth' | 'area' | 'earth' | 'water' | 'flow' | 'mass' | 'haul';

const DISPLAY: Record<DisplayUse, Record<UnitSystem, Unit>> = {
  length: { us: 'ft', metric: 'm' },
  depth: { us: 'in', metric: 'cm' },
  area: { us: 'ft2', metric: 'm2' },
  earth: { us: 'yd3', metric: 'm3' },
  water: { us: 'gal', metric: 'L' },
  flow: { us: 'gpm', metric: 'L/min' },
  mass: { us: 'lb', metric: 'kg' },
  haul: { us: 'ton', metric: 't' },
};

export function displayUnit(use: DisplayUse, system: UnitSystem): Unit {
  return DISPLAY[use][system];
}
