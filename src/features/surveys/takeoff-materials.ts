import { plain } from '../../domain/decimal.js';
import { convert, toSi, type Unit, type UnitSystem } from '../../domain/quantity/index.js';
import type { Takeoff } from '../../domain/trade/index.js';
import { linerSheet, outlineSpans, sheetMargin } from '../../domain/trade/liner/index.js';
import { sedimentStages } from '../../domain/trade/sediment/index.js';
import { stoneEdge } from '../../domain/trade/stone/index.js';
import type { Working } from '../../domain/working.js';
import type { SurveyEntity } from './survey.entity.js';
import type { TakeoffFigure } from './takeoff-figure.js';

/** Assumed where the survey says nothing; common practice, and named in each working. The calculations take other figures. */
const USUAL = { overlapM: 0.3048, edgeM: 0.3048, rockKgPerM3: 2643, gaps: 0.3, waterPercent: 150, gravity: 2.65, bulkingPercent: 25 };

/** What a takeoff says of the materials to move, to buy and to haul. */
export interface TakeoffMaterials {
  readonly linerSheetArea: TakeoffFigure | null;
  readonly edgeStoneWeight: TakeoffFigure;
  readonly sedimentVolumeDug: TakeoffFigure | null;
  readonly sedimentWeight: TakeoffFigure | null;
}

export function takeoffMaterials({ outline, depthProfile, reclaimedMaterials }: SurveyEntity, takeoff: Takeoff, units: UnitSystem): TakeoffMaterials {
  const us = units === 'us';
  const depths = [...(depthProfile ?? []).map(({ depth }) => toSi(depth)), ...(takeoff.maxDepthM === null ? [] : [takeoff.maxDepthM])];
  const reclaimedKg = reclaimedMaterials.filter(({ kind, quantity }) => kind === 'stone' && quantity.unit !== 'each').reduce((sum, { quantity }) => sum + toSi(quantity), 0);
  const edge = stoneEdge({ lengthM: takeoff.perimeterM, heightM: USUAL.edgeM, thicknessM: USUAL.edgeM, densityKgPerM3: USUAL.rockKgPerM3, voidFraction: USUAL.gaps, reclaimedKg });
  const stages = takeoff.sedimentVolumeM3 === null ? null : sedimentStages({ inPlaceM3: takeoff.sedimentVolumeM3, waterPercent: USUAL.waterPercent, drainedWaterPercent: null, gravity: USUAL.gravity, bulkingPercent: USUAL.bulkingPercent });
  return {
    linerSheetArea: outline.shape === 'measured' || depths.length === 0 ? null : sheetArea(outline, Math.max(...depths), us ? 'ft2' : 'm2'),
    edgeStoneWeight: shown(edge.toBuyKg, 'kg', us ? 'ton' : 't', edge.working),
    sedimentVolumeDug: stages && shown(stages.dug.volumeM3, 'm3', us ? 'yd3' : 'm3', stages.working),
    sedimentWeight: stages && shown(stages.inPlace.weightKg, 'kg', us ? 'ton' : 't', stages.working),
  };
}

function sheetArea(outline: SurveyEntity['outline'], depthM: number, unit: Unit): TakeoffFigure {
  const walls = [{ dropM: depthM, runM: 0 }];
  const { lengthM, widthM } = outlineSpans(outline, sheetMargin(walls, USUAL.overlapM).marginM);
  const sheet = linerSheet(lengthM, widthM, walls, USUAL.overlapM);
  return shown(sheet.areaM2, 'm2', unit, sheet.working);
}

function shown(si: number, siUnit: Unit, unit: Unit, working: Working): TakeoffFigure {
  const value = convert(si, siUnit, unit);
  return { value, unit, working: { ...working, steps: [...working.steps, { label: `in ${unit}`, expression: `${plain(si)} ${siUnit}`, value: plain(value), unit }] } };
}
