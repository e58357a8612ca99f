import { plain } from '../../decimal.js';
import { DomainError } from '../../errors.js';
import { given, step } from '../working-lines.js';
import { requirePositive, requireWithin } from '../input-checks.js';
import { LABEL_DECIDES } from './label.js';
import type { Dose } from './concentration-dose.js';

/** Salt above which pond plants suffer, and above which pond fish do, in g/L: common practice. */
const PLANTS_SUFFER_PPT = 1;
const FISH_SUFFER_PPT = 5;

/**
 * Salt that raises the water from one concentration to another: 1 g/L (1 ppt, 0.1 %) is 1 kg in each m3, 8.3454 lb in
 * 1,000 US gal.
 * @param volumeM3 of the water, above 0
 * @param presentPpt salt that is there, 0 to 40 g/L
 * @param targetPpt salt that is wanted, above the present, to 40 g/L
 * @throws DomainError at /volume, /presentPpt or /targetPpt
 * @see Virginia Dept. of Wildlife Resources, "Formulas for determining application rates": 8.345 lb in 1,000,000 gal are 1 ppm
 */
export function saltDose(volumeM3: number, presentPpt: number, targetPpt: number): Dose {
  requirePositive('/volume', volumeM3);
  requireWithin('/presentPpt', presentPpt, 0, 40, 'g/L');
  requireWithin('/targetPpt', targetPpt, 0, 40, 'g/L');
  if (targetPpt <= presentPpt) throw DomainError.at('/targetPpt', 'This must be more than what is there; salt leaves a pond only with its water.');
  const risePpt = targetPpt - presentPpt;
  const doseGrams = volumeM3 * risePpt * 1000;
  return {
    doseGrams,
    working: {
      rule: 'salt = volume × rise in concentration',
      inputs: [given('water', volumeM3, 'm3'), given('salt present', presentPpt, 'g/L'), given('salt wanted', targetPpt, 'g/L')],
      steps: [
        step('rise', `${plain(targetPpt)} − ${plain(presentPpt)}`, risePpt, 'g/L'),
        step('salt', `${plain(volumeM3)} × 1000 × ${plain(risePpt)}`, doseGrams, 'g'),
      ],
    },
    warnings: [
      LABEL_DECIDES,
      'Use salt without additives, and raise it in several steps over a day or two.',
      'Salt stays until water is taken out: never pump salted water to a storm drain, a stream or planted ground; local code decides where it may go.',
      ...(targetPpt > PLANTS_SUFFER_PPT ? ['Above 1 g/L (0.1 %) many pond plants suffer (common practice): treat in a separate tank, or take the plants out.'] : []),
      ...(targetPpt > FISH_SUFFER_PPT ? ['Above 5 g/L (0.5 %) is a bath for a short time, not for a pond (common practice): only under a qualified person\'s eye.'] : []),
    ],
  };
}
