import { toSi } from '../../../domain/quantity/index.js';
import type { FittingKind } from '../../../domain/trade/hydraulics/index.js';
import type { SurveyEntity } from '../../surveys/index.js';

/** What the surveyed run takes of one size of pipe. */
export interface PipeNeed {
  /** m, inside */
  readonly diameterM: number;
  /** m, both sides of the pump together */
  readonly lengthM: number;
  readonly fittings: readonly { readonly kind: FittingKind; readonly count: number }[];
}

/** Where pipe begins and ends in the water there is nothing to buy. */
const ENDS: readonly FittingKind[] = ['entrance-projecting', 'entrance-flush', 'exit'];

/** By size, in the order in which the sizes are surveyed. */
export function pipeNeeds({ pipes }: NonNullable<SurveyEntity['pipeRun']>): PipeNeed[] {
  const sizes = new Map<number, { diameterM: number; lengthM: number; fittings: Map<FittingKind, number> }>();
  for (const { length, innerDiameter, fittings } of pipes) {
    const diameterM = toSi(innerDiameter);
    // Sizes that were entered in different units differ in the last digits.
    const key = Math.round(diameterM * 1e5);
    const size = sizes.get(key) ?? { diameterM, lengthM: 0, fittings: new Map<FittingKind, number>() };
    size.lengthM += toSi(length);
    for (const { kind, count } of fittings ?? []) if (!ENDS.includes(kind)) size.fittings.set(kind, (size.fittings.get(kind) ?? 0) + count);
    sizes.set(key, size);
  }
  return [...sizes.values()].map(({ fittings, ...size }) => ({ ...size, fittings: [...fittings].map(([kind, count]) => ({ kind, count })) }));
}
