import type { UnitSystem } from '../../domain/quantity/index.js';
import { type Takeoff, takeoffDisplayUnit, type TakeoffQuantityName, takeoffValue } from '../../domain/trade/index.js';
import type { TakeoffByPlaceView } from './sediment-by-place.dto.js';
import type { TakeoffFigure } from './takeoff-figure.js';
import type { TakeoffMaterialsView } from './takeoff-materials.dto.js';
import type { TakeoffView } from './takeoff.dto.js';

/** The takeoff in the units that the reader is used to. */
export function toTakeoffView(surveyId: string, takeoff: Takeoff, materials: TakeoffMaterialsView, byPlace: TakeoffByPlaceView | null, units: UnitSystem): TakeoffView {
  const figure = (name: TakeoffQuantityName): TakeoffFigure | null => takeoffValue(takeoff, name, takeoffDisplayUnit(name, units));
  return {
    surveyId,
    surfaceArea: certain(figure('surfaceArea')),
    perimeter: certain(figure('perimeter')),
    sedimentMeanThickness: figure('sedimentMeanThickness'),
    sedimentVolume: figure('sedimentVolume'),
    meanDepth: figure('meanDepth'),
    maxDepth: figure('maxDepth'),
    waterVolume: figure('waterVolume'),
    waterVolumeNow: figure('waterVolumeNow'),
    ...materials,
    sedimentByPlace: byPlace,
    warnings: takeoff.warnings,
  };
}

/** Area and perimeter come from the outline, which every survey has. */
function certain(figure: TakeoffFigure | null): TakeoffFigure {
  if (figure === null) throw new Error('A takeoff without area or perimeter: the outline was not measured.');
  return figure;
}
