import { toSi } from '../../domain/quantity/index.js';
import type { Takeoff } from '../../domain/trade/index.js';
import type { SurveyEntity } from './survey.entity.js';

/** The greatest depth of the profile and the readings, m; null when neither was measured. */
export function greatestDepthM({ depthProfile }: SurveyEntity, { maxDepthM }: Takeoff): number | null {
  const depths = [...(depthProfile ?? []).map(({ depth }) => toSi(depth)), ...(maxDepthM === null ? [] : [maxDepthM])];
  return depths.length === 0 ? null : Math.max(...depths);
}

/** Only stone that was weighed counts against a purchase; stones that were only counted do not. */
export function reclaimedStoneKg({ reclaimedMaterials }: SurveyEntity): number {
  return reclaimedMaterials.filter(({ kind, quantity }) => kind === 'stone' && quantity.unit !== 'each').reduce((sum, { quantity }) => sum + toSi(quantity), 0);
}
