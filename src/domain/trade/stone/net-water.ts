import { plain } from '../../decimal.js';
import { DomainError, within } from '../../errors.js';
import type { Working } from '../../working.js';
import { given, step } from '../working-lines.js';
import { checkVoidFraction } from './void-fraction.js';

/** Stone by its mass, or gravel by its volume with the voids. */
export type Fill =
  | { readonly kind: 'stone'; readonly massKg: number; readonly densityKgPerM3: number; readonly submergedPercent: number }
  | { readonly kind: 'gravel'; readonly bulkVolumeM3: number; readonly voidFraction: number; readonly submergedPercent: number };

export interface NetWater {
  readonly displacedM3: number;
  readonly netM3: number;
  readonly warnings: string[];
  readonly working: Working;
}

/**
 * The water left in a pond once rock and gravel lie in it: only their solids, and only below the water line, displace.
 * Doses and turnover go by this volume; by the gross one a dose is too strong. Archimedes; definition.
 * @param grossM3 the volume without rock, above 0
 * @throws DomainError at /stone/i or /gravel/i (index within its kind), or at /waterVolume when the rock would take all of it
 */
export function netWater(grossM3: number, fills: readonly Fill[]): NetWater {
  const indexOf = { stone: 0, gravel: 0 };
  const warnings: string[] = [];
  const parts = fills.map((fill) => {
    const name = `${fill.kind} ${++indexOf[fill.kind]}`;
    const solidM3 = fill.kind === 'stone' ? fill.massKg / fill.densityKgPerM3 : fill.bulkVolumeM3 * (1 - fill.voidFraction);
    if (fill.kind === 'gravel') warnings.push(...within(`/gravel/${indexOf.gravel - 1}`, () => checkVoidFraction(fill.voidFraction)));
    const solids = fill.kind === 'stone' ? `${plain(fill.massKg)} / ${plain(fill.densityKgPerM3)}` : `${plain(fill.bulkVolumeM3)} × (1 − ${plain(fill.voidFraction)})`;
    const displacedM3 = (solidM3 * fill.submergedPercent) / 100;
    return { displacedM3, line: step(`displaced by ${name}`, `${solids} × ${plain(fill.submergedPercent)} / 100`, displacedM3, 'm3') };
  });
  const displacedM3 = parts.reduce((sum, part) => sum + part.displacedM3, 0);
  const netM3 = grossM3 - displacedM3;
  if (!(netM3 > 0)) throw DomainError.at('/waterVolume', 'The rock and gravel below the water line take up the whole volume; check the volume, the quantities and their units.');
  if (displacedM3 > grossM3 / 2) warnings.push('Rock and gravel take more than half of the volume; check the quantities.');
  const working: Working = {
    rule: 'net water = gross volume − solids of stone and gravel below the water line',
    inputs: [given('gross volume', grossM3, 'm3')],
    steps: [...parts.map((part) => part.line), step('net water', `${plain(grossM3)} − ${plain(displacedM3)}`, netM3, 'm3')],
  };
  return { displacedM3, netM3, warnings, working };
}
