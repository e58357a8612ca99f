import { displayUnit, type UnitSystem } from '../../domain/quantity/index.js';
import { loadsOf, sedimentStages, type Stage } from '../../domain/trade/sediment/index.js';
import type { Working } from '../../domain/working.js';
import type { TakeoffFigure } from './takeoff-figure.js';
import type { TakeoffMaterialsView } from './takeoff-materials.dto.js';
import { shown, withSource } from './takeoff-shown.js';
import type { TakeoffTruck } from './takeoff-truck.js';

/** Assumed where the survey says nothing, and named in each working. The calculation "dewatering" takes other figures. */
const ASSUMED = { waterPercent: 150, drainedWaterPercent: 100, gravity: 2.65, bulkingPercent: 25 } as const;
const ASSUMED_INPUTS = ['water content', 'water content after draining', 'specific gravity of the solids', 'bulking'];

type SedimentFigures = Pick<TakeoffMaterialsView, 'sedimentVolumeDug' | 'sedimentWeight' | 'sedimentVolumeDrained' | 'sedimentWeightDrained' | 'haulLoads' | 'haulLoadsDrained'>;

/** What is dug, drained and hauled, from the sediment in place; all null without readings. */
export function takeoffSediment(inPlaceM3: number | null, truck: TakeoffTruck, units: UnitSystem): SedimentFigures {
  if (inPlaceM3 === null) return { sedimentVolumeDug: null, sedimentWeight: null, sedimentVolumeDrained: null, sedimentWeightDrained: null, haulLoads: null, haulLoadsDrained: null };
  const { inPlace, dug, drained, working } = sedimentStages({ inPlaceM3, ...ASSUMED });
  const settled = drained as Stage;
  const told = withSource(working, 'assumed', ASSUMED_INPUTS);
  const [earth, haul] = [displayUnit('earth', units), displayUnit('haul', units)];
  // Dug again from where it drained, it takes up room as it did the first time.
  const loaded = { volumeM3: settled.volumeM3 * (1 + ASSUMED.bulkingPercent / 100), weightKg: settled.weightKg };
  return {
    sedimentVolumeDug: shown(dug.volumeM3, 'm3', earth, told),
    sedimentWeight: shown(inPlace.weightKg, 'kg', haul, told),
    sedimentVolumeDrained: shown(settled.volumeM3, 'm3', earth, told),
    sedimentWeightDrained: shown(settled.weightKg, 'kg', haul, told),
    haulLoads: loads(dug, truck, told),
    haulLoadsDrained: loads(loaded, truck, told),
  };
}

function loads({ volumeM3, weightKg }: Stage, truck: TakeoffTruck, stages: Working): TakeoffFigure {
  const { loads: count, working } = loadsOf(volumeM3, weightKg, truck);
  const told = withSource(working, truck.source, ['box', 'payload']);
  return shown(count, 'each', 'each', withSource(told, stages.rule, ['volume as loaded', 'weight']));
}
