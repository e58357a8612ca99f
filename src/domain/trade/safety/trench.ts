import { requirePositive, requireWithin } from '../input-checks.js';
import type { Caution, Checked } from './caution.js';
import { asked, compared, deferral, reaches } from './caution.js';

export type Soil = 'stable-rock' | 'type-a' | 'type-b' | 'type-c' | 'unknown';

/** Horizontal to vertical; unknown soil counts as the weakest. @see 29 CFR 1926, Subpart P, Appendix B, read as reproduced */
const SLOPES: Readonly<Record<Soil, number>> = { 'stable-rock': 0, 'type-a': 0.75, 'type-b': 1, 'type-c': 1.5, unknown: 1.5 };
export const SOILS = Object.keys(SLOPES) as Soil[];

const PROTECTION_M = 1.524;
const LADDER_M = 1.2192;
const SPOIL_M = 0.6096;
const ENGINEER_M = 6.096;

export interface TrenchInput {
  /** m, above 0 */
  readonly depthM: number;
  readonly soil: Soil;
  /** From the edge to spoil and materials; m; null when unknown. */
  readonly spoilDistanceM: number | null;
}

export interface TrenchCheck extends Checked {
  /** How far each side would be sloped back at the usual slope of this soil; m. */
  readonly slopeBackM: number;
}

/**
 * Cautions for a trench or excavation that people enter.
 * @throws DomainError at /depth or /spoilDistance
 * @see 29 CFR 1926.651 and 1926.652, Subpart P, Appendix B
 */
export function trenchCautions({ depthM, soil, spoilDistanceM }: TrenchInput): TrenchCheck {
  requirePositive('/depth', depthM);
  if (spoilDistanceM !== null) requireWithin('/spoilDistance', spoilDistanceM, 0, 1000, 'm');
  const cautions: Caution[] = [];
  const add = (text: string, source: string): void => void cautions.push({ topic: 'Excavation', text, source });
  const deep = reaches(depthM, PROTECTION_M);
  const climbed = reaches(depthM, LADDER_M);
  if (deep) add('At 5 ft (1.52 m) and deeper a protective system (sloping, shoring or a trench box) is required unless the whole face is stable rock. Nobody enters before it stands.', '29 CFR 1926.652(a)(1)');
  else add('Below 5 ft (1.52 m) a protective system is still required when a competent person sees any sign of a possible cave-in. Soaked soil beside a leaking pond is such a sign.', '29 CFR 1926.652(a)(1)');
  if (climbed) add('From 4 ft (1.22 m) on a ladder, stair or ramp is required within 25 ft (7.6 m) of every worker in a trench.', '29 CFR 1926.651(c)(2)');
  const spoilNear = spoilDistanceM === null || spoilDistanceM < SPOIL_M;
  if (spoilNear) add('Keep spoil, stone and equipment at least 2 ft (0.61 m) from the edge, or retain them.', '29 CFR 1926.651(j)(2)');
  if (depthM > ENGINEER_M) add('Deeper than 20 ft (6.1 m) a registered professional engineer must design the protection.', '29 CFR 1926, Subpart P');
  if (soil === 'unknown') add('Nobody has classed the soil: it counts as the weakest, type C, 1½ horizontal to 1 vertical, until a competent person has tested it.', '29 CFR 1926.652(b)');
  add('A competent person inspects before each shift, after rain, and whenever something changed. Water standing or running in is a hazard by itself.', '29 CFR 1926.651(h), (k)');
  add('Have buried utilities marked before digging (811 in the US), wait the time that the state sets, and keep off septic tanks and drain fields.', 'state one-call law; local health code');
  cautions.push(deferral('a competent person on the site'));
  const slopeBackM = SLOPES[soil] * depthM;
  return {
    cautions,
    slopeBackM,
    steps: [
      compared('protective system', depthM, '>=', PROTECTION_M, 'm', deep),
      compared('ladder', depthM, '>=', LADDER_M, 'm', climbed),
      compared('engineer', depthM, '>', ENGINEER_M, 'm', depthM > ENGINEER_M),
      asked('spoil nearer than 2 ft or its place unknown', spoilNear),
      { label: 'slope back on each side', expression: `${SLOPES[soil]} × ${depthM}`, value: String(slopeBackM), unit: 'm' },
    ],
  };
}
