import { plain } from '../../domain/decimal.js';
import { convert, displayUnit, type Unit, type UnitSystem } from '../../domain/quantity/index.js';
import { sedimentByEdge } from '../../domain/trade/sediment/index.js';
import type { Working } from '../../domain/working.js';
import type { TakeoffByPlaceView } from './sediment-by-place.dto.js';
import type { SurveyEntity } from './survey.entity.js';
import type { TakeoffFigure } from './takeoff-figure.js';

/** Computed for who reads a takeoff only: prices go by the means, and need not wait for it. */
export function toByPlaceView({ outline, probes }: Pick<SurveyEntity, 'outline' | 'probes'>, units: UnitSystem): TakeoffByPlaceView | null {
  const byEdge = probes && sedimentByEdge(outline, probes);
  const first = byEdge?.[0]?.result;
  if (byEdge == null || first === undefined) return null;
  const [earth, water] = [displayUnit('earth', units), displayUnit('water', units)];
  const { error } = first;
  return {
    byEdge: byEdge.map(({ edge, result: { triangulated, working } }) => ({
      edge,
      sedimentVolume: figure(triangulated.sedimentM3, earth, working),
      waterVolume: figure(triangulated.toBottomM3, water, working),
    })),
    standardError: error && figure(error.standardErrorM3, earth, first.working),
    halfIntervalPercent: error?.halfWidthShare == null ? null : 100 * error.halfWidthShare,
    extraReadings: error?.extraReadings ?? null,
    warnings: [...new Set(byEdge.flatMap(({ result }) => result.warnings))],
  };
}

function figure(m3: number, unit: Unit, working: Working): TakeoffFigure {
  const value = convert(m3, 'm3', unit);
  return { value, unit, working: { ...working, steps: [...working.steps, { label: `in ${unit}`, expression: `${plain(m3)} m3`, value: plain(value), unit }] } };
}
