import { plain } from '../../domain/decimal.js';
import { displayUnit, type UnitSystem } from '../../domain/quantity/index.js';
import type { Takeoff } from '../../domain/trade/index.js';
import { straightSheet } from '../../domain/trade/liner/index.js';
import { stoneEdge, USUAL_EDGE } from '../../domain/trade/stone/index.js';
import type { Working } from '../../domain/working.js';
import { greatestDepthM, reclaimedStoneKg } from './site-figures.js';
import type { SurveyEntity } from './survey.entity.js';
import type { TakeoffMaterialsView } from './takeoff-materials.dto.js';
import { takeoffSediment } from './takeoff-sediment.js';
import { shown } from './takeoff-shown.js';
import type { TakeoffTruck } from './takeoff-truck.js';

export function takeoffMaterials(survey: SurveyEntity, takeoff: Takeoff, truck: TakeoffTruck, units: UnitSystem): TakeoffMaterialsView {
  return { ...sheetFigures(survey, takeoff, units), ...edgeFigures(survey, takeoff, units), ...takeoffSediment(takeoff.sedimentVolumeM3, truck, units) };
}

type SheetFigures = Pick<TakeoffMaterialsView, 'linerSheetArea' | 'linerSheetLength' | 'linerSheetWidth' | 'underlaymentArea'>;

function sheetFigures(survey: SurveyEntity, takeoff: Takeoff, units: UnitSystem): SheetFigures {
  const sheet = straightSheet(survey.outline, greatestDepthM(survey, takeoff));
  if (sheet === null) return { linerSheetArea: null, linerSheetLength: null, linerSheetWidth: null, underlaymentArea: null };
  const { areaM2, lengthM, widthM, working } = sheet;
  const [area, length] = [displayUnit('area', units), displayUnit('length', units)];
  // The side asked for is the last line before the conversion.
  const side = (label: string): Working => ({ ...working, steps: working.steps.filter((step) => step.label === 'path of the profile' || step.label === label) });
  const layer = { label: 'one layer of underlayment', expression: `1 × ${plain(areaM2)}`, value: plain(areaM2), unit: 'm2' };
  return {
    linerSheetArea: shown(areaM2, 'm2', area, working),
    linerSheetLength: shown(lengthM, 'm', length, side('sheet length')),
    linerSheetWidth: shown(widthM, 'm', length, side('sheet width')),
    underlaymentArea: shown(areaM2, 'm2', area, { ...working, steps: [...working.steps, layer] }),
  };
}

type EdgeFigures = Pick<TakeoffMaterialsView, 'edgeStoneNeeded' | 'edgeStoneWeight' | 'edgeVoidVolume' | 'reclaimedStoneWeight'>;

function edgeFigures(survey: SurveyEntity, { perimeterM }: Takeoff, units: UnitSystem): EdgeFigures {
  const reclaimedKg = reclaimedStoneKg(survey);
  const { toBuyKg, massKg, bulkVolumeM3, working } = stoneEdge({ lengthM: perimeterM, ...USUAL_EDGE, reclaimedKg });
  const upTo = (label: string): Working => ({ ...working, steps: working.steps.slice(0, 1 + working.steps.findIndex((step) => step.label === label)) });
  const voidM3 = bulkVolumeM3 * USUAL_EDGE.voidFraction;
  const gaps = upTo('volume with gaps');
  const [haul, earth] = [displayUnit('haul', units), displayUnit('earth', units)];
  return {
    edgeStoneNeeded: shown(massKg, 'kg', haul, upTo('mass')),
    edgeStoneWeight: shown(toBuyKg, 'kg', haul, working),
    edgeVoidVolume: shown(voidM3, 'm3', earth, { ...gaps, rule: 'gaps = volume of the edge × void fraction', steps: [...gaps.steps, { label: 'gaps', expression: `${plain(bulkVolumeM3)} × ${plain(USUAL_EDGE.voidFraction)}`, value: plain(voidM3), unit: 'm3' }] }),
    reclaimedStoneWeight: shown(reclaimedKg, 'kg', haul, reclaimedWorking(survey, reclaimedKg)),
  };
}

function reclaimedWorking({ reclaimedMaterials }: SurveyEntity, reclaimedKg: number): Working {
  const stone = reclaimedMaterials.filter(({ kind }) => kind === 'stone');
  return {
    rule: 'reclaimed stone = what was weighed + what was heaped × density × (1 − void fraction); stones that were only counted do not count',
    inputs: [
      ...stone.map(({ quantity }, i) => ({ name: `stone ${i + 1}`, value: plain(quantity.value), unit: quantity.unit })),
      { name: 'density', value: plain(USUAL_EDGE.densityKgPerM3), unit: 'kg/m3', source: 'assumed for heaps' },
      { name: 'void fraction', value: plain(USUAL_EDGE.voidFraction), source: 'assumed for heaps' },
    ],
    steps: [{ label: 'reclaimed', expression: `sum over ${stone.length} entries`, value: plain(reclaimedKg), unit: 'kg' }],
  };
}
