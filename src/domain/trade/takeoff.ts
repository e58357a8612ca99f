import { plain } from '../decimal.js';
import { within } from '../errors.js';
import type { Working } from '../working.js';
import { requireSoundProbes } from './check-probes.js';
import { measureOutline } from './measure-outline.js';
import { metresPer } from './numbers.js';
import type { Outline } from './outline.js';
import { probeFigures, type DepthFigure } from './probe-means.js';
import { probeWarnings } from './probe-warnings.js';
import type { Probes } from './probes.js';
import { errorWarnings, volumeError } from './sediment/index.js';
import type { TakeoffQuantityName } from './takeoff-quantities.js';

export interface TakeoffInput {
  readonly outline: Outline;
  readonly probes: Probes | null;
}

/** The quantities of one survey, SI; null where there are no probe readings to take them from. */
export interface Takeoff {
  readonly surfaceAreaM2: number;
  readonly perimeterM: number;
  readonly sedimentMeanThicknessM: number | null;
  /** In place, before digging: bulking and draining change what is hauled. */
  readonly sedimentVolumeM3: number | null;
  /** Mean and greatest depth to the hard bottom. */
  readonly meanDepthM: number | null;
  readonly maxDepthM: number | null;
  /** Full, after clean-out. */
  readonly waterVolumeM3: number | null;
  /** Full, as found, above the sediment: what dosing before the job must reckon with. */
  readonly waterVolumeNowM3: number | null;
  readonly warnings: string[];
  readonly workings: Partial<Record<TakeoffQuantityName, Working>>;
}

/**
 * Surface, sediment and water of a surveyed pond: volumes are surface area × mean of the readings.
 * @throws DomainError with pointers such as /outline/points/3 and /probes/readings/3/toBottom
 * @see "The Tale of the Tape", Texas extension lesson: volume = surface area × average of all soundings
 */
export function takeoff(input: TakeoffInput): Takeoff {
  const shape = within('/outline', () => measureOutline(input.outline));
  const outlineOnly = { surfaceArea: shape.areaWorking, perimeter: shape.perimeterWorking };
  const { areaM2, perimeterM } = shape;
  const { probes } = input;
  if (probes === null) return { ...withoutProbes, surfaceAreaM2: areaM2, perimeterM, warnings: [], workings: outlineOnly };
  within('/probes', () => requireSoundProbes(probes));
  const figures = probeFigures(probes);
  const sediment = volume('Sediment volume in place: surface area × mean thickness', areaM2, figures.thickness);
  const water = volume('Water volume after clean-out: surface area × mean depth to hard bottom', areaM2, figures.depth);
  const now = volume('Water volume as found: surface area × mean depth to sediment', areaM2, figures.depthToSediment);
  return {
    surfaceAreaM2: areaM2,
    perimeterM,
    sedimentMeanThicknessM: figures.thickness.metres,
    sedimentVolumeM3: sediment.value,
    meanDepthM: figures.depth.metres,
    maxDepthM: figures.deepest.metres,
    waterVolumeM3: water.value,
    waterVolumeNowM3: now.value,
    warnings: [...probeWarnings(input.outline, shape.points, probes), ...unsure(probes, areaM2)],
    workings: {
      ...outlineOnly,
      sedimentMeanThickness: figures.thickness.working,
      sedimentVolume: sediment.working,
      meanDepth: figures.depth.working,
      maxDepth: figures.deepest.working,
      waterVolume: water.working,
      waterVolumeNow: now.working,
    },
  };
}

/** How many readings are missing; a single one, as of a small basin, is left to the estimator. */
function unsure({ unit, readings }: Probes, areaM2: number): string[] {
  if (readings.length < 2) return [];
  const factor = metresPer(unit).toNumber();
  return errorWarnings(volumeError(readings.map(({ toSediment, toBottom }) => (toBottom - toSediment) * factor), areaM2));
}

const withoutProbes = {
  sedimentMeanThicknessM: null,
  sedimentVolumeM3: null,
  meanDepthM: null,
  maxDepthM: null,
  waterVolumeM3: null,
  waterVolumeNowM3: null,
};

function volume(rule: string, areaM2: number, depth: DepthFigure): { value: number; working: Working } {
  const value = areaM2 * depth.metres;
  const inputs = [
    { name: 'surface area', value: plain(areaM2), unit: 'm2' },
    { name: 'mean', value: plain(depth.metres), unit: 'm', source: depth.working.rule },
  ];
  const expression = `${plain(areaM2)} × ${plain(depth.metres)}`;
  return { value, working: { rule, inputs, steps: [{ label: 'volume', expression, value: plain(value), unit: 'm3' }] } };
}
