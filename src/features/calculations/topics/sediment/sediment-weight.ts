import { ApiProperty, ApiSchema } from '@nestjs/swagger';
import { toSi, type Quantity } from '../../../../domain/quantity/index.js';
import { sedimentStages } from '../../../../domain/trade/sediment/index.js';
import { NumberField, QuantityBody } from '../../../../platform/http/fields/index.js';
import { calculation } from '../../calculation.js';
import { ComputedView } from '../../computed.view.js';
import { figure } from './figures.js';
import { SedimentBody, SedimentStageView, stageView } from './stage.view.js';

@ApiSchema({ name: 'SedimentWeightInput' })
export class SedimentWeightBody extends SedimentBody {
  @NumberField({ description: 'Water after draining in percent of the dry solids by weight; not drained unless told.', min: 10, max: 2000, optional: true })
  drainedWaterPercent?: number | null;
}

@ApiSchema({ name: 'SedimentWeight' })
export class SedimentWeightView extends ComputedView {
  @ApiProperty({ type: SedimentStageView, description: 'In the pond.' })
  inPlace: SedimentStageView;

  @ApiProperty({ type: SedimentStageView, description: 'Dug: bulked, with the same weight.' })
  dug: SedimentStageView;

  @ApiProperty({ type: SedimentStageView, nullable: true, description: 'Drained and settled, before it is loaded again; null when not asked for.' })
  drained: SedimentStageView | null;

  @ApiProperty({ type: QuantityBody, description: 'The weight of 1 ft3 in place, in lb.' })
  weightPerFt3: Quantity;
}

export const SEDIMENT_WEIGHT = calculation({
  name: 'sediment-weight',
  title: 'Sediment in place, dug and drained',
  description: 'Weight by the phase relations of saturated soil (any soil-mechanics text), dug volume by bulking (10 to 40 percent for mechanically dug sediment: US Army ERDC, TR DOER-1), drained volume and weight by water content. Usual for 50 to 500 percent of water; a laboratory\'s water content may be over the wet weight: convert it first.',
  input: SedimentWeightBody,
  output: SedimentWeightView,
  run: (input: SedimentWeightBody): SedimentWeightView => {
    const { inPlace, dug, drained, densityKgPerM3, working, warnings } = sedimentStages({
      inPlaceM3: toSi(input.inPlaceVolume),
      waterPercent: input.waterPercent ?? 150,
      drainedWaterPercent: input.drainedWaterPercent ?? null,
      gravity: input.gravity ?? 2.65,
      bulkingPercent: input.bulkingPercent ?? 25,
    });
    return { inPlace: stageView(inPlace), dug: stageView(dug), drained: drained && stageView(drained), weightPerFt3: figure(densityKgPerM3 * 0.028316846592, 'lb'), working, warnings };
  },
});
