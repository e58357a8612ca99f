import { plain } from '../../decimal.js';
import { DomainError } from '../../errors.js';
import type { Working } from '../../working.js';

/**
 * How full of its bounding box a stone is: a rounded one is near an ellipsoid (π/6), quarried rock fills 0.85 of it,
 * a sawn block all.
 */
export const STONE_FORMS = { rounded: Math.PI / 6, quarried: 0.85, block: 1 } as const;
export type StoneForm = keyof typeof STONE_FORMS;

export interface BoulderWeight {
  readonly weightKg: number;
  readonly volumeM3: number;
  readonly working: Working;
}

/**
 * Weight = k · γ · a · b · c.
 * @param dimensionsM the three dimensions, in m, each above 0
 * @param densityKgPerM3 of the rock; 2,400 to 2,720 (150 to 170 lb/ft3) is usual
 * @throws DomainError at /dimensions/i
 * @see FHWA FP-14 Table 705-1, whose masses are 0.85 · 165 lb/ft3 · D³; USACE streambank manual, App. A, A.2.3
 */
export function boulderWeight(dimensionsM: readonly [number, number, number], form: StoneForm, densityKgPerM3: number): BoulderWeight {
  dimensionsM.forEach((dimension, index) => {
    if (!(dimension > 0)) throw DomainError.at(`/dimensions/${index}`, 'Each dimension must be more than 0.');
  });
  const [a, b, c] = dimensionsM;
  const volumeM3 = STONE_FORMS[form] * a * b * c;
  const weightKg = volumeM3 * densityKgPerM3;
  const working: Working = {
    rule: 'weight = form factor × density × length × width × height',
    inputs: [
      { name: 'form factor', value: plain(STONE_FORMS[form]), source: form },
      { name: 'density', value: plain(densityKgPerM3), unit: 'kg/m3' },
      ...dimensionsM.map((value, i) => ({ name: `dimension ${i + 1}`, value: plain(value), unit: 'm' })),
    ],
    steps: [
      { label: 'volume', expression: `${plain(STONE_FORMS[form])} × ${dimensionsM.map(plain).join(' × ')}`, value: plain(volumeM3), unit: 'm3' },
      { label: 'weight', expression: `${plain(volumeM3)} × ${plain(densityKgPerM3)}`, value: plain(weightKg), unit: 'kg' },
    ],
  };
  return { weightKg, volumeM3, working };
}
