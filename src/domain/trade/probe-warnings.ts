import { inMetres, metresPer } from './numbers.js';
import { outsideTest } from './locate.js';
import type { Outline, Point } from './outline.js';
import type { Probes } from './probes.js';

const NAMED = 10;

/**
 * What an estimator should look at again, though it does not change the figures: readings placed outside the outline.
 * Outlines without points (rectangle, ellipse, measured) have no axes to place a reading in.
 */
export function probeWarnings(outline: Outline, pointsM: readonly Point[] | null, probes: Probes): string[] {
  if (pointsM === null || !('unit' in outline)) return [];
  const factor = metresPer(outline.unit).toNumber();
  const outside = outsideTest(pointsM);
  const strays = probes.readings.flatMap(({ at }, i) =>
    at !== undefined && outside(inMetres(at, factor)) ? [i] : [],
  );
  if (strays.length === 0) return [];
  const named = strays.slice(0, NAMED).join(', ') + (strays.length > NAMED ? ` and ${strays.length - NAMED} more` : '');
  return [`Readings outside the outline, counted from 0: ${named}. They count as any other; check where they were taken.`];
}
