import { DomainError, within } from '../../errors.js';
import type { Working } from '../../working.js';
import { requireSoundProbes } from '../check-probes.js';
import { measureOutline } from '../measure-outline.js';
import { metresPer } from '../numbers.js';
import type { Outline } from '../outline.js';
import { probeFigures } from '../probe-means.js';
import type { Probes } from '../probes.js';
import { placeWarnings } from './by-place-warnings.js';
import { placeWorking } from './by-place-working.js';
import { layerOf, layersAlong, type EdgeRule } from './edge-rule.js';
import { meshOf } from './mesh.js';
import { placeReadings } from './place-readings.js';
import { triangulate, type Triangulated } from './triangulate.js';
import { volumeError, type VolumeError } from './volume-error.js';

/** A pond's sediment and water, once by the mean of the readings and once by where they were taken; SI. */
export interface ByPlace {
  readonly areaM2: number;
  /** Surface × mean of all readings, with a place or without. */
  readonly mean: { readonly sedimentM3: number; readonly waterM3: number };
  readonly triangulated: Triangulated;
  /** Of the volume by the mean; null for a single reading. */
  readonly error: VolumeError | null;
  /** How many different places the readings stand for. */
  readonly places: number;
  readonly working: Working;
  readonly warnings: string[];
}

/**
 * Interpolates the readings over the outline: Delaunay triangles between the readings and the shore.
 * @param outline one with points (polygon or two-stake): the others have no axes to place a reading in
 * @param edge what stands at the shore where no reading was taken
 * @throws DomainError at /outline…, /probes/readings… or /edge
 */
export function sedimentByPlace(outline: Outline, probes: Probes, edge: EdgeRule): ByPlace {
  const { areaM2, points } = within('/outline', () => measureOutline(outline));
  if (points === null || !('unit' in outline)) {
    throw DomainError.at('/outline/shape', 'Readings can be placed in a polygon or a two-stake outline only; the other shapes have no axes.');
  }
  within('/probes', () => requireSoundProbes(probes));
  const placement = within('/probes', () => placeReadings(points, outline.unit, probes));
  const { placed } = placement;
  const mesh = meshOf(points, placed);
  const layers = [...within('/edge', () => layersAlong(mesh.shore, placed, edge)), ...mesh.inside.map(layerOf)];
  const triangulated = triangulate(points, mesh, layers);
  const { thickness, depth } = probeFigures(probes);
  const mean = { sedimentM3: areaM2 * thickness.metres, waterM3: areaM2 * depth.metres };
  const factor = metresPer(probes.unit).toNumber();
  const error = volumeError(probes.readings.map(({ toSediment, toBottom }) => (toBottom - toSediment) * factor), areaM2);
  return {
    areaM2,
    mean,
    triangulated,
    error,
    places: placed.length,
    working: placeWorking({ areaM2, thicknessM: thickness.metres, readings: probes.readings.length, places: placed.length, edge, shorePoints: mesh.shore.length, triangulated, mean, error }),
    warnings: placeWarnings({ areaM2, placement, triangulated, mean, error, edge }),
  };
}
