import { plain } from '../../decimal.js';
import { DomainError } from '../../errors.js';
import { given, step } from '../working-lines.js';
import { requirePositive, requireWithin } from '../input-checks.js';
import { LABEL_DECIDES } from './label.js';
import type { Dose } from './concentration-dose.js';

/** Equivalent weight of calcium carbonate, the measure of alkalinity: half of 100.087 g/mol. */
const CALCIUM_CARBONATE = 50.0435;

/** mg of the pure substance for each mg/L of alkalinity as CaCO3 in a liter: equivalent weights over that of CaCO3. */
export const ALKALINITY_FORMS = { 'sodium-bicarbonate': 84.0066 / CALCIUM_CARBONATE, 'sodium-carbonate': 105.988 / 2 / CALCIUM_CARBONATE } as const;
export type AlkalinityForm = keyof typeof ALKALINITY_FORMS;

export interface AlkalinityDose extends Dose {
  /** mg of the substance for each mg of alkalinity as CaCO3. */
  readonly ratio: number;
  /** How many days to spread it over, in equal parts. */
  readonly days: number;
}

export interface AlkalinityInput {
  readonly volumeM3: number;
  /** As CaCO3, 0 to 1,000 mg/L. */
  readonly presentMgPerL: number;
  /** As CaCO3, above the present, to 1,000 mg/L. */
  readonly targetMgPerL: number;
  readonly form: AlkalinityForm;
  readonly activePercent: number;
  /** The most that one day may change, 1 to 100 mg/L; 20 to 30 is common practice. */
  readonly mostPerDayMgPerL: number;
}

/**
 * Dose = volume × rise × equivalent weight / 50.0435: 1.67867 mg of sodium bicarbonate or 1.05896 mg of sodium carbonate
 * for each mg of alkalinity as CaCO3.
 * @throws DomainError at /volume, /presentMgPerL, /targetMgPerL, /activePercent or /mostPerDayMgPerL
 */
export function alkalinityDose({ volumeM3, presentMgPerL, targetMgPerL, form, activePercent, mostPerDayMgPerL }: AlkalinityInput): AlkalinityDose {
  requirePositive('/volume', volumeM3);
  requireWithin('/presentMgPerL', presentMgPerL, 0, 1000, 'mg/L');
  requireWithin('/targetMgPerL', targetMgPerL, 0, 1000, 'mg/L');
  requirePositive('/activePercent', activePercent);
  requireWithin('/activePercent', activePercent, 0, 100, 'percent');
  requireWithin('/mostPerDayMgPerL', mostPerDayMgPerL, 1, 100, 'mg/L');
  if (targetMgPerL <= presentMgPerL) throw DomainError.at('/targetMgPerL', 'This must be more than what is there; a dose can only raise alkalinity.');
  const rise = targetMgPerL - presentMgPerL;
  const ratio = ALKALINITY_FORMS[form];
  const doseGrams = (volumeM3 * rise * ratio * 100) / activePercent;
  const days = Math.ceil(rise / mostPerDayMgPerL);
  return {
    doseGrams,
    ratio,
    days,
    working: {
      rule: 'dose = volume × rise of alkalinity as CaCO3 × ratio × 100 / percent active',
      inputs: [
        given('water', volumeM3, 'm3'),
        given('alkalinity present', presentMgPerL, 'mg/L'),
        given('alkalinity wanted', targetMgPerL, 'mg/L'),
        given('ratio', ratio, 'mg for each mg of alkalinity', form),
        given('active', activePercent, 'percent'),
        given('most in a day', mostPerDayMgPerL, 'mg/L', 'common practice: 20 to 30'),
      ],
      steps: [
        step('rise', `${plain(targetMgPerL)} − ${plain(presentMgPerL)}`, rise, 'mg/L'),
        step('product', `${plain(volumeM3)} × ${plain(rise)} × ${plain(ratio)} × 100 / ${plain(activePercent)}`, doseGrams, 'g'),
        step('days', `${plain(rise)} / ${plain(mostPerDayMgPerL)}, rounded up`, days),
      ],
    },
    warnings: [
      LABEL_DECIDES,
      FORM_CAUTIONS[form],
      ...(days > 1 ? [`Give it in ${days} equal parts, one a day, and test before each.`] : []),
      ...(mostPerDayMgPerL > 30 ? ['More than 30 mg/L in a day is more than common practice allows.'] : []),
    ],
  };
}

const FORM_CAUTIONS: Record<AlkalinityForm, string> = {
  'sodium-bicarbonate': 'Bicarbonate moves the pH toward 8.3, which makes more of any ammonia un-ionized: test ammonia first.',
  'sodium-carbonate': 'Soda ash raises the pH steeply and burns eyes and skin; with fish in the water bicarbonate is the usual form.',
};
