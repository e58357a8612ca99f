import { requirePositive, requireWithin } from '../input-checks.js';

/** The pond or basin at the foot of a stream. */
export interface Basin {
  readonly surfaceM2: number;
  /** From the water that the pump runs with up to the edge, or to the overflow; m. */
  readonly freeboardM: number;
}

export interface DrainBack {
  readonly volumeM3: number;
  /** How much the basin rises; null without one. Upright walls are taken: a basin that widens rises less. */
  readonly riseM: number | null;
  readonly basinTakesIt: boolean | null;
}

/**
 * The water that runs down into the basin when the pump stops: length × section. Pipes above the basin come on top.
 * @throws DomainError at /basin/surface or /basin/freeboard
 */
export function drainBack(lengthM: number, sectionM2: number, basin: Basin | null): DrainBack {
  const volumeM3 = lengthM * sectionM2;
  if (basin === null) return { volumeM3, riseM: null, basinTakesIt: null };
  requirePositive('/basin/surface', basin.surfaceM2);
  requireWithin('/basin/freeboard', basin.freeboardM, 0, 10, 'm');
  const riseM = volumeM3 / basin.surfaceM2;
  return { volumeM3, riseM, basinTakesIt: riseM <= basin.freeboardM };
}
