import { DomainError, within } from '../../errors.js';
import type { Working } from '../../working.js';
import { requireSoundProbes } from '../check-probes.js';
import { measureOutline } from '../measure-outline.js';
import { EdgeBands, SHORE_TOLERANCE_M } from '../locate.js';
import { metresPer } from '../numbers.js';
import type { Outline } from '../outline.js';
import { probeFigures } from '../probe-means.js';
import type { Probes } from '../probes.js';
import { placeWarnings } from './by-place-warnings.js';
import { placeWorking } from './by-place-working.js';
import { layersOf, type EdgeRule } from './edge-rule.js';
import { meshOf, type Mesh } from './mesh.js';
import { placeReadings, requirePlaces, type Placement } from './place-readings.js';
import { coverOf, volumesOf, type Cover, type Triangulated } from './triangulate.js';
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

/** Readings and shore of a pond, triangulated: what the choice of the edge does not change. */
interface PlacedPond {
  readonly areaM2: number;
  readonly placement: Placement;
  readonly mesh: Mesh;
  readonly cover: Cover;
  readonly thicknessM: number;
  readonly mean: ByPlace['mean'];
  readonly error: VolumeError | null;
  readonly readings: number;
}

/**
 * Interpolates the readings over the outline: Delaunay triangles between the readings and the shore.
 * @param outline one with points (polygon or two-stake): the others have no axes to place a reading in
 * @param edge what stands at the shore where no reading was taken
 * @throws DomainError at /outline…, /probes/readings… or /edge
 */
export function sedimentByPlace(outline: Outline, probes: Probes, edge: EdgeRule): ByPlace {
  const pond = placedPond(outline, probes);
  within('/probes', () => requirePlaces(pond.placement));
  return atEdge(pond, edge);
}

/**
 * The same for every edge that needs no further figure, as bounds for who has not chosen yet; shore-readings only when
 * there are readings on the shore.
 * @returns null when the outline has no axes or no reading has a place inside it
 * @throws DomainError at /outline… or /probes/readings… for what can't be measured
 */
export function sedimentByEdge(outline: Outline, probes: Probes): { readonly edge: EdgeRule['kind']; readonly result: ByPlace }[] | null {
  if (!('unit' in outline) || !probes.readings.some(({ at }) => at !== undefined)) return null;
  const pond = placedPond(outline, probes);
  if (pond.placement.placed.length === 0) return null;
  const onShore = pond.mesh.shore.some(({ reading }) => reading !== null);
  const kinds = onShore ? (['zero', 'nearest', 'shore-readings'] as const) : (['zero', 'nearest'] as const);
  return kinds.map((kind) => ({ edge: kind, result: atEdge(pond, { kind }) }));
}

function placedPond(outline: Outline, probes: Probes): PlacedPond {
  const { areaM2, points } = within('/outline', () => measureOutline(outline));
  if (points === null || !('unit' in outline)) {
    throw DomainError.at('/outline/shape', 'Readings can be placed in a polygon or a two-stake outline only; the other shapes have no axes.');
  }
  within('/probes', () => requireSoundProbes(probes));
  const edges = new EdgeBands(points, SHORE_TOLERANCE_M);
  const placement = placeReadings(points, edges, outline.unit, probes);
  const { thickness, depth } = probeFigures(probes);
  const factor = metresPer(probes.unit).toNumber();
  const mesh = meshOf(points, placement.placed);
  return {
    areaM2,
    placement,
    mesh,
    cover: coverOf(edges, mesh),
    thicknessM: thickness.metres,
    mean: { sedimentM3: areaM2 * thickness.metres, waterM3: areaM2 * depth.metres },
    error: volumeError(probes.readings.map(({ toSediment, toBottom }) => (toBottom - toSediment) * factor), areaM2),
    readings: probes.readings.length,
  };
}

function atEdge({ areaM2, placement, mesh, cover, thicknessM, mean, error, readings }: PlacedPond, edge: EdgeRule): ByPlace {
  const { placed } = placement;
  const triangulated = volumesOf(cover, within('/edge', () => layersOf(mesh, placed, edge)));
  return {
    areaM2,
    mean,
    triangulated,
    error,
    places: placed.length,
    working: placeWorking({ areaM2, thicknessM, readings, places: placed.length, edge, shorePoints: mesh.shore.length, triangulated, mean, error }),
    warnings: placeWarnings({ areaM2, placement, triangulated, mean, error, edge }),
  };
}
