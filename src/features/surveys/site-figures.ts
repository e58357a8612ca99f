import { kindOf, toSi, type Unit } from '../../domain/quantity/index.js';
import type { Takeoff } from '../../domain/trade/index.js';
import { USUAL_EDGE } from '../../domain/trade/stone/index.js';
import type { SurveyEntity } from './survey.entity.js';

/** The greatest depth of the profile and the readings, m; null when neither was measured, or found any depth. */
export function greatestDepthM({ depthProfile }: SurveyEntity, { maxDepthM }: Takeoff): number | null {
  const depths = [...(depthProfile ?? []).map(({ depth }) => toSi(depth)), ...(maxDepthM === null ? [] : [maxDepthM])];
  const deepest = Math.max(0, ...depths);
  return deepest > 0 ? deepest : null;
}

/**
 * Stone that counts against a purchase, kg: what was weighed, and what was heaped at the density and gaps of a usual edge.
 * Stones that were only counted do not.
 */
export function reclaimedStoneKg({ reclaimedMaterials }: SurveyEntity): number {
  return reclaimedMaterials.filter(({ kind }) => kind === 'stone').reduce((sum, { quantity }) => sum + toSi(quantity) * kgPer(quantity.unit), 0);
}

function kgPer(unit: Unit): number {
  switch (kindOf(unit)) {
    case 'mass':
      return 1;
    case 'volume':
      return USUAL_EDGE.densityKgPerM3 * (1 - USUAL_EDGE.voidFraction);
    default:
      return 0;
  }
}

/** From where the pump draws to where the water comes back, in a straight line, m; null when the survey does not tell the places. */
export function suctionToDischargeM({ outline, pipeRun }: Pick<SurveyEntity, 'outline' | 'pipeRun'>): number | null {
  if (!pipeRun?.suctionAt || !pipeRun.dischargeAt || outline.shape === 'measured') return null;
  const [[ax, ay], [bx, by]] = [pipeRun.suctionAt, pipeRun.dischargeAt];
  const unit = 'unit' in outline ? outline.unit : outline.length.unit;
  return toSi({ value: Math.hypot(bx - ax, by - ay), unit });
}
