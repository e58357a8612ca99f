import { plain } from '../../decimal.js';
import type { Working } from '../../working.js';
import { given, step } from '../working-lines.js';
import { requirePositive, requireWithin } from '../input-checks.js';
import { LABEL_DECIDES } from './label.js';
import { dechlorinationRatio, isThiosulfate, NITROGEN_LEFT_PER_CHLORINE, type Dechlorinator, type ThiosulfateReaction } from './dechlorinators.js';

export interface Dechlorination {
  readonly doseGrams: number;
  /** mg of pure substance for each mg of chlorine. */
  readonly ratio: number;
  /** What chloramine leaves behind, in mg/L of ammonia nitrogen in the added water; 0 for free chlorine. */
  readonly ammoniaLeftMgPerL: number;
  readonly working: Working;
  readonly warnings: string[];
}

export interface DechlorinationInput {
  /** The water that is added, not the pond's: what is there has no chlorine left. Above 0. */
  readonly addedVolumeM3: number;
  /** Total chlorine as Cl2, above 0 to 20 mg/L. */
  readonly chlorineMgPerL: number;
  readonly chloramine: boolean;
  readonly form: Dechlorinator;
  /** What thiosulfate ends as; the others ignore it. */
  readonly reaction: ThiosulfateReaction;
  /** The pure substance in the product, above 0 to 100 percent. */
  readonly activePercent: number;
}

/**
 * Dose = added water × chlorine × ratio × 100 / percent active.
 * @throws DomainError at /addedVolume, /chlorineMgPerL or /activePercent
 * @see dechlorinationRatio for the ratios and their sources
 */
export function dechlorination(input: DechlorinationInput): Dechlorination {
  const { addedVolumeM3, chlorineMgPerL, form, reaction, activePercent } = input;
  requirePositive('/addedVolume', addedVolumeM3);
  requirePositive('/chlorineMgPerL', chlorineMgPerL);
  requireWithin('/chlorineMgPerL', chlorineMgPerL, 0, 20, 'mg/L');
  requirePositive('/activePercent', activePercent);
  requireWithin('/activePercent', activePercent, 0, 100, 'percent');
  const ratio = dechlorinationRatio(form, reaction);
  const chlorineGrams = addedVolumeM3 * chlorineMgPerL;
  const doseGrams = (chlorineGrams * ratio * 100) / activePercent;
  const working: Working = {
    rule: 'dose = added water × chlorine × ratio × 100 / percent active',
    inputs: [
      given('added water', addedVolumeM3, 'm3'),
      given('chlorine as Cl2', chlorineMgPerL, 'mg/L'),
      given('ratio', ratio, 'mg for each mg of chlorine', isThiosulfate(form) ? `${form}, to ${reaction}` : form),
      given('active', activePercent, 'percent'),
    ],
    steps: [
      step('chlorine', `${plain(addedVolumeM3)} × ${plain(chlorineMgPerL)}`, chlorineGrams, 'g'),
      step('product', `${plain(chlorineGrams)} × ${plain(ratio)} × 100 / ${plain(activePercent)}`, doseGrams, 'g'),
    ],
  };
  const ammoniaLeftMgPerL = input.chloramine ? chlorineMgPerL * NITROGEN_LEFT_PER_CHLORINE : 0;
  return { doseGrams, ratio, ammoniaLeftMgPerL, working, warnings: warningsOf(input, ammoniaLeftMgPerL) };
}

function warningsOf({ chloramine, form, reaction, chlorineMgPerL }: DechlorinationInput, ammoniaLeftMgPerL: number): string[] {
  return [
    LABEL_DECIDES,
    'The dose is for the water that is added, not for the whole pond.',
    ...(chloramine ? [`Chloramine leaves ${ammoniaLeftMgPerL.toFixed(2)} mg/L of ammonia nitrogen in the added water: test for ammonia, and see that the filter or a binder takes it.`] : []),
    ...(isThiosulfate(form) ? ['Thiosulfate takes some oxygen from the water: aerate while filling.'] : []),
    ...(isThiosulfate(form) && reaction !== 'tetrathionate' ? ['This ratio takes thiosulfate further than the reaction that laboratories dose for; test for chlorine before fish go in.'] : []),
    ...(chlorineMgPerL > 4 ? ['More than 4 mg/L is more than US drinking water may carry (EPA maximum residual disinfectant level, a yearly average): measure again.'] : []),
  ];
}
