import { toSi } from '../../domain/quantity/index.js';
import type { Outline, Takeoff } from '../../domain/trade/index.js';
import type { SurveyEntity } from '../surveys/index.js';

/** What a survey says of the site, in SI; null where it was not measured. */
export interface SiteFigures {
  readonly outline: Outline;
  readonly takeoff: Takeoff;
  /** The greatest of the depth profile and the readings, m. */
  readonly greatestDepthM: number | null;
}

export function siteFigures({ outline, depthProfile }: SurveyEntity, takeoff: Takeoff): SiteFigures {
  const profile = depthProfile?.map((point) => toSi(point.depth)) ?? [];
  const depths = [...profile, ...(takeoff.maxDepthM === null ? [] : [takeoff.maxDepthM])];
  return { outline, takeoff, greatestDepthM: depths.length === 0 ? null : Math.max(...depths) };
}
