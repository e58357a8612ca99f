import { convert, displayUnit, type Quantity, type Unit, type UnitSystem } from '../../../domain/quantity/index.js';
import type { LoadTotalView } from './totals.dto.js';
import type { LoadSums } from './totals.repository.js';

/** The loads of each material over all units, and how many of them say no volume or weight. */
export function sumLoads(sums: readonly LoadSums[], units: UnitSystem): LoadTotalView[] {
  return [...new Set(sums.map(({ material }) => material))].map((material) => {
    const own = sums.filter((one) => one.material === material);
    const volume = total(own, 'volume', displayUnit('earth', units));
    const weight = total(own, 'weight', displayUnit('haul', units));
    return { material, loads: loadsOf(own), volume: volume.sum, loadsWithoutVolume: volume.without, weight: weight.sum, loadsWithoutWeight: weight.without };
  });
}

function total(sums: readonly LoadSums[], figure: 'volume' | 'weight', unit: Unit): { sum: Quantity | null; without: number } {
  const without = loadsOf(sums.filter((one) => one[figure].unit === null));
  const said = sums.map((one) => one[figure]).flatMap(({ sum, unit: from }) => (from === null ? [] : [convert(sum, from, unit)]));
  return { sum: said.length === 0 ? null : { value: said.reduce((a, b) => a + b, 0), unit }, without };
}

function loadsOf(sums: readonly LoadSums[]): number {
  return sums.reduce((sum, { loads }) => sum + loads, 0);
}
