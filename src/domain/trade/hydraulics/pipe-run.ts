import { DomainError } from '../../errors.js';
import { fittingLoss, FITTING_KINDS, minorResistance, type FittingKind } from './fittings.js';
import { darcyWeisbachGradient, hazenWilliamsResistance } from './friction.js';

/** One stretch of pipe of one size, on the pump's suction or discharge. Lengths in m. */
export interface PipeRun {
  readonly side: 'suction' | 'discharge';
  readonly innerDiameterM: number;
  readonly lengthM: number;
  readonly hazenWilliamsC: number;
  /** Absolute, ε. */
  readonly roughnessM: number;
  readonly fittings: readonly { readonly kind: FittingKind; readonly count: number }[];
  /** K of what is not among the fittings. */
  readonly otherK: number;
}

/** Up to which ε/D the Colebrook equation is proven. */
const MOST_RELATIVE_ROUGHNESS = 0.05;

/** What a run loses at a flow: a factor of Q^1.852, a function of Q, and a factor of Q². */
export interface RunResistance {
  readonly sumOfK: number;
  readonly hazenWilliams: number;
  readonly darcyWeisbach: (flow: number) => number;
  readonly minor: number;
}

/**
 * @param viscosity m2/s
 * @throws DomainError at /innerDiameter, /length, /hazenWilliamsC, /roughness or /fittings/i/…
 */
export function runResistance(run: PipeRun, viscosity: number): RunResistance {
  const { innerDiameterM, lengthM, hazenWilliamsC, roughnessM, fittings, otherK } = run;
  if (!(innerDiameterM > 0)) throw DomainError.at('/innerDiameter', 'The inner diameter must be more than 0.');
  if (!(lengthM >= 0)) throw DomainError.at('/length', 'The length must not be negative.');
  if (!(hazenWilliamsC > 0)) throw DomainError.at('/hazenWilliamsC', 'The coefficient C must be more than 0.');
  if (!(roughnessM >= 0 && roughnessM <= MOST_RELATIVE_ROUGHNESS * innerDiameterM)) throw DomainError.at('/roughness', 'The roughness must lie between 0 and a twentieth of the inner diameter.');
  fittings.forEach(({ kind, count }, i) => {
    if (!FITTING_KINDS.includes(kind)) throw DomainError.at(`/fittings/${i}/kind`, `A fitting is one of ${FITTING_KINDS.join(', ')}.`);
    if (!(count >= 0)) throw DomainError.at(`/fittings/${i}/count`, 'The count must not be negative.');
  });
  const sumOfK = fittings.reduce((sum, { kind, count }) => sum + count * fittingLoss(kind, innerDiameterM), otherK);
  return {
    sumOfK,
    hazenWilliams: lengthM * hazenWilliamsResistance(innerDiameterM, hazenWilliamsC),
    darcyWeisbach: (flow) => lengthM * darcyWeisbachGradient(flow, innerDiameterM, roughnessM, viscosity),
    minor: minorResistance(sumOfK, innerDiameterM),
  };
}
