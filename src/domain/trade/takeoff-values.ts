import { plain } from '../decimal.js';
import { convert, type Unit } from '../quantity/index.js';
import type { Working } from '../working.js';
import type { Takeoff } from './takeoff.js';
import { takeoffSiUnit, type TakeoffQuantityName } from './takeoff-quantities.js';

export interface TakeoffValue {
  readonly value: number;
  readonly unit: Unit;
  readonly working: Working;
}

/**
 * One quantity of a takeoff by name, in `unit`, its working ending with the conversion; null when the survey had no
 * readings to take it from.
 * @throws DomainError when `unit` is of another kind or unknown
 */
export function takeoffValue(result: Takeoff, name: TakeoffQuantityName, unit: Unit): TakeoffValue | null {
  const si = siValues(result)[name];
  const working = result.workings[name];
  if (si === null || working === undefined) return null;
  const siUnit = takeoffSiUnit(name);
  if (unit === siUnit) return { value: si, unit, working };
  const value = convert(si, siUnit, unit);
  const step = { label: `in ${unit}`, expression: `${plain(si)} ${siUnit}`, value: plain(value), unit };
  return { value, unit, working: { ...working, steps: [...working.steps, step] } };
}

function siValues(result: Takeoff): Record<TakeoffQuantityName, number | null> {
  return {
    surfaceArea: result.surfaceAreaM2,
    perimeter: result.perimeterM,
    sedimentMeanThickness: result.sedimentMeanThicknessM,
    sedimentVolume: result.sedimentVolumeM3,
    meanDepth: result.meanDepthM,
    maxDepth: result.maxDepthM,
    waterVolume: result.waterVolumeM3,
    waterVolumeNow: result.waterVolumeNowM3,
  };
}
