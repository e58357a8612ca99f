import { Decimal, sumDecimals } from '../../domain/decimal.js';
import type { SurveyEntity } from '../surveys/index.js';
import { type Scope, WORK_OF } from './scopes.js';

const READY = { stone: 'Clean and set again the reclaimed stone', plants: 'Divide and repot the reclaimed plants', driftwood: 'Clean and place again the reclaimed driftwood' } as const;

/** The material on the site that a scope uses again. */
export interface Reclaimed {
  readonly description: string;
  /** How many pieces; null when some of it was weighed or heaped, which no rule counts. */
  readonly pieces: Decimal | null;
}

/** What a scope uses again, or null. Amounts are added up unit by unit, so that the line stays short. */
export function reclaimedFor(scope: Scope, { reclaimedMaterials }: Pick<SurveyEntity, 'reclaimedMaterials'>): Reclaimed | null {
  const kind = WORK_OF[scope].reclaims;
  const items = reclaimedMaterials.filter((item) => item.kind === kind && item.quantity.value > 0);
  if (kind === null || items.length === 0) return null;
  const units = [...new Set(items.map(({ quantity }) => quantity.unit))];
  const sums = units.map((unit) => ({ unit, sum: sumDecimals(items.filter(({ quantity }) => quantity.unit === unit).map(({ quantity }) => new Decimal(quantity.value))) }));
  const [first, ...others] = sums;
  return {
    description: `${READY[kind]}: ${sums.map(({ unit, sum }) => `${sum.toSignificantDigits(6).toFixed()} ${unit}`).join(' + ')}`,
    pieces: first?.unit === 'each' && others.length === 0 ? first.sum : null,
  };
}
