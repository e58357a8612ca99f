import { plain } from '../../domain/decimal.js';
import { convert, type Unit, type UnitSystem } from '../../domain/quantity/index.js';
import type { Takeoff } from '../../domain/trade/index.js';
import { straightSheet } from '../../domain/trade/liner/index.js';
import { sedimentStages } from '../../domain/trade/sediment/index.js';
import { stoneEdge, USUAL_EDGE } from '../../domain/trade/stone/index.js';
import type { Working } from '../../domain/working.js';
import { greatestDepthM, reclaimedStoneKg } from './site-figures.js';
import type { SurveyEntity } from './survey.entity.js';
import type { TakeoffFigure } from './takeoff-figure.js';

/** Assumed where the survey says nothing; common practice, and named in each working. The calculations take other figures. */
const USUAL = { waterPercent: 150, gravity: 2.65, bulkingPercent: 25 };

/** What a takeoff says of the materials to move, to buy and to haul. */
export interface TakeoffMaterials {
  readonly linerSheetArea: TakeoffFigure | null;
  readonly edgeStoneWeight: TakeoffFigure;
  readonly sedimentVolumeDug: TakeoffFigure | null;
  readonly sedimentWeight: TakeoffFigure | null;
}

export function takeoffMaterials(survey: SurveyEntity, takeoff: Takeoff, units: UnitSystem): TakeoffMaterials {
  const us = units === 'us';
  const sheet = straightSheet(survey.outline, greatestDepthM(survey, takeoff));
  const edge = stoneEdge({ lengthM: takeoff.perimeterM, ...USUAL_EDGE, reclaimedKg: reclaimedStoneKg(survey) });
  const stages = takeoff.sedimentVolumeM3 === null ? null : sedimentStages({ inPlaceM3: takeoff.sedimentVolumeM3, waterPercent: USUAL.waterPercent, drainedWaterPercent: null, gravity: USUAL.gravity, bulkingPercent: USUAL.bulkingPercent });
  return {
    linerSheetArea: sheet && shown(sheet.areaM2, 'm2', us ? 'ft2' : 'm2', sheet.working),
    edgeStoneWeight: shown(edge.toBuyKg, 'kg', us ? 'ton' : 't', edge.working),
    sedimentVolumeDug: stages && shown(stages.dug.volumeM3, 'm3', us ? 'yd3' : 'm3', stages.working),
    sedimentWeight: stages && shown(stages.inPlace.weightKg, 'kg', us ? 'ton' : 't', stages.working),
  };
}

function shown(si: number, siUnit: Unit, unit: Unit, working: Working): TakeoffFigure {
  const value = convert(si, siUnit, unit);
  return { value, unit, working: { ...working, steps: [...working.steps, { label: `in ${unit}`, expression: `${plain(si)} ${siUnit}`, value: plain(value), unit }] } };
}
