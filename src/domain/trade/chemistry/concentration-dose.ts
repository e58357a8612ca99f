import { plain } from '../../decimal.js';
import type { Working } from '../../working.js';
import { given, step } from '../working-lines.js';
import { requirePositive, requireWithin } from '../input-checks.js';
import { LABEL_DECIDES } from './label.js';

export interface Dose {
  readonly doseGrams: number;
  readonly working: Working;
  readonly warnings: string[];
}

/**
 * Dose = volume × concentration × 100 / percent active: 1 mg/L is 1 g in each m3 of water.
 * @param volumeM3 of the water to treat, above 0
 * @param mgPerL of the active substance that is wanted, above 0, to 100,000
 * @param activePercent of the product, above 0 to 100
 * @throws DomainError at /volume, /mgPerL or /activePercent
 * @see Virginia Dept. of Wildlife Resources, "Formulas for determining application rates"; Mississippi State Extension
 */
export function concentrationDose(volumeM3: number, mgPerL: number, activePercent: number): Dose {
  requirePositive('/volume', volumeM3);
  requirePositive('/mgPerL', mgPerL);
  requireWithin('/mgPerL', mgPerL, 0, 100_000, 'mg/L');
  requirePositive('/activePercent', activePercent);
  requireWithin('/activePercent', activePercent, 0, 100, 'percent');
  const active = volumeM3 * mgPerL;
  const doseGrams = (active * 100) / activePercent;
  const working: Working = {
    rule: 'dose = volume × concentration × 100 / percent active',
    inputs: [given('water', volumeM3, 'm3'), given('concentration', mgPerL, 'mg/L'), given('active', activePercent, 'percent')],
    steps: [
      step('active substance', `${plain(volumeM3)} × ${plain(mgPerL)}`, active, 'g'),
      step('product', `${plain(active)} × 100 / ${plain(activePercent)}`, doseGrams, 'g'),
    ],
  };
  return { doseGrams, working, warnings: [LABEL_DECIDES] };
}
