import { plain } from '../../decimal.js';
import { within } from '../../errors.js';
import type { Working } from '../../working.js';
import { given, step } from '../working-lines.js';
import { boulderWeight, type StoneForm } from './boulder-weight.js';
import { purchaseAfterReuse, type Purchase } from './reclaimed.js';

/** Stones of one size. */
export interface StonePile {
  /** m, each above 0 */
  readonly dimensionsM: readonly [number, number, number];
  readonly form: StoneForm;
  /** Whole number, 1 or more. */
  readonly count: number;
}

export interface ReclaimedStone extends Purchase {
  readonly massKg: number;
  readonly working: Working;
}

/**
 * Mass of the stone that lies on the site, size by size, set against what the work needs.
 * @param densityKgPerM3 of the rock
 * @param neededKg 0 or more
 * @throws DomainError at /piles/i/dimensions/j
 * @see {@link boulderWeight}
 */
export function reclaimedStone(piles: readonly StonePile[], densityKgPerM3: number, neededKg: number): ReclaimedStone {
  const masses = piles.map(({ dimensionsM, form, count }, i) => count * within(`/piles/${i}`, () => boulderWeight(dimensionsM, form, densityKgPerM3)).weightKg);
  const massKg = masses.reduce((sum, mass) => sum + mass, 0);
  const purchase = purchaseAfterReuse(neededKg, massKg);
  const working: Working = {
    rule: 'mass = sum over the sizes of count × form factor × density × length × width × height; what is reclaimed is used first',
    inputs: [given('density', densityKgPerM3, 'kg/m3'), given('needed', neededKg, 'kg'), ...piles.map((pile, i) => given(`count of size ${i + 1}`, pile.count))],
    steps: [
      ...piles.map(({ dimensionsM, form, count }, i) => step(`size ${i + 1}, ${form}`, `${count} × weight of ${dimensionsM.map(plain).join(' × ')} m`, masses[i] ?? 0, 'kg')),
      step('reclaimed', masses.map(plain).join(' + '), massKg, 'kg'),
      step('to buy', `${plain(neededKg)} − min(${plain(neededKg)}, ${plain(massKg)})`, purchase.toBuyKg, 'kg'),
    ],
  };
  return { massKg, ...purchase, working };
}
