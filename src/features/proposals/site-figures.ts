import type { MeasuredShape, Outline, Takeoff } from '../../domain/trade/index.js';
import { toSi } from '../../domain/quantity/index.js';
import type { SurveyEntity } from '../surveys/index.js';

/** What a survey says of the site, in SI; null where it was not measured. */
export interface SiteFigures {
  readonly takeoff: Takeoff;
  /** The greatest length and width of the water, m, along the axes that it was measured in. */
  readonly box: { readonly lengthM: number; readonly widthM: number } | null;
  /** m */
  readonly greatestDepthM: number | null;
}

/** @param shape the outline measured, of the same survey */
export function siteFigures(survey: SurveyEntity, shape: MeasuredShape, takeoff: Takeoff): SiteFigures {
  const profile = survey.depthProfile?.map((point) => toSi(point.depth)) ?? [];
  const depths = [...profile, ...(takeoff.maxDepthM === null ? [] : [takeoff.maxDepthM])];
  return { takeoff, box: boxOf(survey.outline, shape), greatestDepthM: depths.length === 0 ? null : Math.max(...depths) };
}

function boxOf(outline: Outline, { points }: MeasuredShape): SiteFigures['box'] {
  if (outline.shape === 'rectangle' || outline.shape === 'ellipse') return { lengthM: toSi(outline.length), widthM: toSi(outline.width) };
  if (points === null) return null;
  const span = (axis: 0 | 1): number => {
    const values = points.map((point) => point[axis]);
    return Math.max(...values) - Math.min(...values);
  };
  return { lengthM: span(0), widthM: span(1) };
}
